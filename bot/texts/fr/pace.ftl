# Not checked by a native speaker.
pace-pause-title = Une pause pour { $children } ?
pace-pause-how = Rien n’arrive avant le jour choisi, chez aucune aide. Ensuite cela reprend tout seul, et il n’y a rien à rattraper.
pace-paused-title = Une pause pour { $children }
pace-paused-line = { $child } : la séance revient le { $day }.
pace-running-line = { $child } : pas de pause.
pace-more = { $count ->
    [one] Et un enfant de plus.
   *[other] Et { $count } enfants de plus.
  }
pace-paused-until = Rien n’arrive avant le { $day }.
pace-started-again = La séance revient, dès le prochain soir.
pace-ask-day = Quel jour la séance doit-elle revenir ? Envoyez-le ainsi : 12 octobre
pace-bad-shape = Je n’ai pas reconnu de jour dans { $typed }. Envoyez-le ainsi : 12 octobre
pace-bad-date = { $typed } n’est pas une date du calendrier. Envoyez-la ainsi : 12 octobre
pace-bad-slash = { $typed } peut désigner deux dates. Écrivez le mois en lettres, comme 12 octobre.
pace-bad-weekday = Le { $day } est un { $weekday }. Envoyez le jour encore une fois, s’il vous plaît.
pace-bad-past = Le { $day } est déjà passé. Envoyez un jour du { $first } au { $last }.
pace-bad-far = Le { $day } est trop loin : une pause dure { $most } jours au plus. Envoyez un jour du { $first } au { $last }.
pace-days-title = Quels jours la séance doit-elle venir ?
pace-days-line = { $child } : { $days }
pace-days-three = { $child } : trois soirs par semaine en ce moment, car personne n’a répondu depuis un moment
pace-days-one = { $child } : un soir par semaine en ce moment, car personne n’a répondu depuis un moment
pace-days-paused = { $child } : une pause jusqu’au { $day }
pace-days-how = Touchez un jour pour l’ajouter ou l’enlever. Dès le prochain soir, pour toutes les aides de l’enfant.
pace-days-last = Un jour doit rester. Pour souffler, il y a /pause.
pace-every-day = Chaque jour d’école, dès le prochain soir.
pace-fewer-three = Nous envoyons la séance trois soirs par semaine en ce moment. Un appui, et elle vient chaque jour d’école.
pace-fewer-one = Nous envoyons la séance un soir par semaine en ce moment. Un appui, et elle vient chaque jour d’école.
pace-today-paused = { $child } : une pause jusqu’au { $day }. /pause y met fin.
pace-held = à quelle fréquence vient la séance
pace-held-daily = chaque jour d’école
pace-held-three = trois soirs par semaine
pace-held-one = un soir par semaine
pace-held-announced = moins de soirs dès le { $day }
pace-held-kept = gardé ainsi par l’enseignant
pace-held-paused = pause jusqu’au { $day }
pace-held-days = seulement { $days }
