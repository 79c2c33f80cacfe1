# Not checked by a native speaker.
evening-heading = { $child } · { $day }
evening-offer = Environ { $minutes } : { $parts }.
evening-then-pages = Ensuite, { $pages }.
evening-nudge = Il reste du temps ce soir pour quelques minutes, si cela vous convient.
evening-reminder = Voici le rappel que vous aviez demandé. Commencez quand vous voulez.
evening-later-at = Vous avez demandé un rappel : il viendra à { $time }.
evening-not-today = Pas aujourd’hui. Ce n’est pas grave du tout.

evening-part = Partie { $part } sur { $of } : { $title }
evening-count = Comptez ensemble à voix haute : commencez à { $start }, { $length ->
    [one] { $length } nombre
   *[other] { $length } nombres
  } en tout. Arrêtez-vous à la première erreur.
evening-say = Dire chaque réponse à voix haute, environ { $seconds } secondes par carte. Sans se presser.
evening-say-untimed = Dire chaque réponse à voix haute, en prenant le temps qu’il faut.
evening-read = Lire chaque mot à voix haute et montrer ou écrire le nombre, environ { $seconds } secondes par carte. Sans se presser.
evening-read-untimed = Lire chaque mot à voix haute et montrer ou écrire le nombre, en prenant le temps qu’il faut.

evening-tap-last = Touchez le dernier nombre juste.
evening-tap-missed = Touchez les cartes pas encore sues (✗), puis « { $done } ». Pour l’instant : { $right } sur { $asked }.
evening-ask-pages = { $pages }. Combien de pages ont été faites ?

evening-part-result = { $part } : { $right } sur { $asked }, { $compared }
evening-first-time = pour la première fois
evening-better = { $by } de plus que son meilleur score
evening-same = comme son meilleur score
evening-below = son meilleur score : { $best }
evening-own-only = Comparé uniquement aux autres soirs de cet enfant.
evening-thanks = Merci. C’était du temps bien employé.

evening-elsewhere-done = Séance faite avec une autre personne.
evening-elsewhere-now = Une autre personne note cette séance en ce moment.
evening-closed = Cette journée est finie et sa séance est close. Envoyez /today pour celle d’aujourd’hui.
evening-what-to-change = Que souhaitez-vous changer ? Ce qui avait été noté est conservé à côté.
evening-other-message = La suite est dans l’autre message de ce soir.
