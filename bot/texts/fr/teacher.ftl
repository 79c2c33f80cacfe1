# Not checked by a native speaker.
teacher-welcome = Bienvenue. Vous voilà enseignant ici.
teacher-welcome-next = Créez votre classe maintenant : cela prend environ trois minutes. /newclass le permet à tout moment.

teacher-ask-title = Comment s’appelle la classe ? Par exemple : classe des Martins-pêcheurs
teacher-ask-roster = Envoyez les surnoms des enfants, un par ligne, { $most } caractères au plus chacun. Des surnoms seulement, pas de noms de famille. Ou envoyez la liste en fichier XLSX ou CSV.
teacher-ask-evening = À quelle heure envoyer la séance ? De { $from } à { $to }, par exemple 17:30. Une famille peut choisir la sienne.
teacher-ask-nudge = À quelle heure envoyer l’unique petit rappel, si personne n’a rien noté ? Au moins { $gap } minutes après la séance, à { $latest } au plus tard.
teacher-ask-digest = À quelle heure recevoir votre bilan ? Par exemple 20:00. Après l’heure de la séance, il compte aussi ce soir-là.

teacher-children = { $children ->
    [one] { $children } enfant, { $joined } avec une aide
   *[other] { $children } enfants, { $joined } avec une aide
  }
teacher-week = Séance { $weekdays } à { $evening }, rappel à { $nudge } ({ $zone })
teacher-digest = Bilan : { $weekday } à { $time }
teacher-book = Cahier : { $book }, { $range }, { $pages } par jour
teacher-no-book = Cahier : aucun
teacher-no-plan = Pas encore de plan de la semaine : rien n’est envoyé.
teacher-no-class = Vous n’avez pas encore de classe. Créez-en une avec /newclass.

teacher-times = { $class } : jours et heures
teacher-times-days = Jours d’école : { $weekdays }
teacher-times-drill = Séance à { $evening }, rappel à { $nudge }
teacher-times-zone = Fuseau horaire : { $zone }
teacher-times-tap = Touchez ce que vous voulez changer.

teacher-bad-time = { $typed } n’est pas une heure. Envoyez heures et minutes de 00:00 à 23:59, comme 17:30.
teacher-bad-zone = Je ne connais pas le fuseau horaire { $typed }.
teacher-bad-zone-send = Envoyez une ville qui donne son nom à un fuseau, comme Nairobi, ou un fuseau comme Europe/London.
teacher-saved = Enregistré. Si l’heure de la séance est déjà passée aujourd’hui, elle vaut dès demain.
teacher-class-made = La classe est créée.
teacher-class-made-next = Ci-dessus, ses jours et heures habituels ; changez ce qui ne convient pas. Ensuite : les enfants, puis le plan de la semaine.
