# Not checked by a native speaker.
set-up-zone = Dans quel fuseau horaire sont les familles ? Touchez l’horloge qui est juste, ou envoyez une ville comme Nairobi ou Europe/London.
set-up-zones = Il y en a plusieurs. Lequel ?
set-up-first-plan = { $class } : le premier plan
set-up-grade = { $curriculum }. Quel niveau ?
set-up-curriculum = Quel programme est le plus proche du vôtre ?
set-up-suggest = Je propose cinq étapes habituelles à cette période de l’année scolaire. Vous les relisez avant tout envoi.
set-up-no-steps = Aucune étape n’est indiquée pour ce niveau. Ouvrez le plan de la semaine et choisissez vous-même les parties.
set-up-cancelled = Rien n’a changé.
set-up-nothing-asked = Plus rien n’attend de réponse.
set-up-gone-on = Cette classe est déjà créée, ou abandonnée. Envoyez /class pour voir où vous en êtes.
