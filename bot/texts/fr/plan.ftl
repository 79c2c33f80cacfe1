# Not checked by a native speaker.

plan-cards =
  { $count ->
    [one] { $count } carte
   *[other] { $count } cartes
  }
plan-numbers =
  { $count ->
    [one] { $count } nombre
   *[other] { $count } nombres
  }

plan-size = { $amount }, { $seconds } s par réponse
plan-line = { $part } : { $size }

plan-and-more =
  { $count ->
    [one] { $step } et { $count } autre
   *[other] { $step } et { $count } autres
  }

plan-usual-size = Taille habituelle : { $size }.
plan-shuffled = Les cartes arrivent mélangées, à peu près autant de chaque sorte.
plan-step-usual = { $step }, étape habituelle en { $grade }
plan-step-not-usual = { $step }, étape non notée comme habituelle en { $grade }

plan-statement = { $grade } : { $statement }.
plan-source = Avec nos mots, en anglais ; { $source }.
plan-doubt-secondary = lu dans un résumé seulement
plan-doubt-memory = de mémoire, à vérifier
plan-not-usual = Étape non notée comme habituelle en { $grade }.
plan-usual-elsewhere = Étape non notée comme habituelle en { $grade }, mais en { $others }.
plan-no-source = Pas de source publiée : usage courant.
plan-asked-for = Demandé (avec nos mots, en anglais) :
plan-other-places =
  { $count ->
    [one] et { $count } autre endroit
   *[other] et { $count } autres endroits
  }

plan-already-there = La partie { $part } travaille déjà cela. Choisissez autre chose.
plan-no-room-apart = Séparément, cela fait { $parts } parties, et le maximum est { $max }. Retirez d’abord une autre partie.
plan-none-last = Aucun plan n’était en vigueur la semaine dernière.
plan-none-digest = Le bilan ne propose encore aucun changement de ce plan.
plan-none-term = Le trimestre n’a pas de plan pour le prochain soir d’école.
plan-none-same = Ce plan est déjà en vigueur.
plan-put-in-use = En vigueur dès le prochain soir d’école. Les séances déjà envoyées restent telles quelles.

plan-problem-empty = Il faut au moins une partie dans le plan. Ajoutez-en d’abord une.
plan-problem-parts = { $value } parties, c’est trop : { $max } au plus. Retirez-en une.
plan-problem-cards = Partie { $part } : { $value } ne convient pas comme nombre de cartes ; il en faut de { $min } à { $max }.
plan-problem-seconds = Partie { $part } : { $value } s ne convient pas ; il faut de { $min } à { $max } secondes.
plan-problem-twice = La partie { $part } travaille la même chose qu’une autre. Choisissez autre chose.
plan-problem-mixed = La partie { $part } mélange { $value } étapes ; { $max } au plus. Retirez-en une.
plan-problem-unlike = Partie { $part } : ces étapes demandent des choses différentes et ne peuvent pas être mélangées. Laissez-les séparées.
plan-problem-unknown = La partie { $part } travaille quelque chose que cette version ne connaît pas. Choisissez à nouveau.
