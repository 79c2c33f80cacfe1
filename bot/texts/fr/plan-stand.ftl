# Not checked by a native speaker.

plan-stand-title = { $class } : plan de la semaine
plan-stand-nothing = Rien pour l’instant. Ajoutez une partie.

plan-stand-evening = Environ { $minutes } par soir.
plan-stand-evening-pages =
  { $pages ->
    [one] Environ { $minutes } par soir, puis { $pages } page de { $book }.
   *[other] Environ { $minutes } par soir, puis { $pages } pages de { $book }.
  }

plan-stand-full = { $max } parties au plus : retirez-en une pour en ajouter une autre.

plan-stand-draft-teacher = Modifié, pas encore en vigueur.
plan-stand-draft-proposal = Comme le bilan le propose, pas encore en vigueur.
plan-stand-draft-scheme = Comme dans le trimestre, pas encore en vigueur.

plan-stand-in-use = En vigueur.
plan-stand-proposed = En vigueur, comme le bilan l’a proposé.
plan-stand-term-over = En vigueur. Le trimestre est terminé ; son dernier plan reste.
plan-stand-term = En vigueur, d’après le trimestre.
plan-stand-term-week = En vigueur, d’après le trimestre : semaine { $week } sur { $of }.
plan-stand-until-term = En vigueur jusqu’au début du trimestre.
plan-stand-instead = En vigueur cette semaine à la place de la semaine { $week } sur { $of } du trimestre.
