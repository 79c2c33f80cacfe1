# Not checked by a native speaker.
months-practised-term = { $count ->
    [0] La pratique de ce trimestre commence avec le premier soir.
    [one] Un soir pratiqué ce trimestre.
   *[other] { $count } soirs pratiqués ce trimestre.
  }
months-practised = { $count ->
    [0] La pratique commence avec le premier soir.
    [one] Un soir pratiqué jusqu’ici.
   *[other] { $count } soirs pratiqués jusqu’ici.
  }
months-title = { $name } en { $month }
months-evenings = { $count ->
    [one] Un soir pratiqué ensemble.
   *[other] { $count } soirs pratiqués ensemble.
  }
months-secure = Acquis depuis ce mois-ci : { $steps }.
months-own = Il s’agit des soirs de votre enfant seul, sans comparaison avec d’autres. /settings l’arrête.
months-strand = { $strand } : { $right } sur { $asked } justes en douze semaines
