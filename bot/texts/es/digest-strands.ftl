# Not checked by a native speaker.
digest-strands-secure-means = Seguro: esperamos 9 aciertos de cada 10, a partir de { $answers } respuestas o más.

digest-strands-new = nuevo esta semana
digest-strands-new_step = paso nuevo
digest-strands-same = más o menos como la semana pasada
digest-strands-up = sube desde el { $percent } %
digest-strands-down = baja desde el { $percent } %

digest-strands-tally = { $strand } { $right } de { $asked }
digest-strands-changed = { $tally } ({ $change })
digest-strands-line = Respuestas correctas: { $tallies }.
digest-strands-line-all-new = Respuestas correctas: { $tallies }. Todo nuevo esta semana.
digest-strands-line-all-same = Respuestas correctas: { $tallies }. Todo más o menos como la semana pasada.
digest-strands-line-others-same = Respuestas correctas: { $tallies }. Lo demás, más o menos como la semana pasada.

digest-strands-title = Respuestas correctas por bloque
digest-strands-nothing = En estos días no ha practicado nadie. No se puede decir nada.
digest-strands-row = { $tally }, { $change }
digest-strands-secure = seguro en { $secure } de { $children }
digest-strands-not-yet = { $count } todavía no
digest-strands-rose = { $count ->
    [one] { $count } ha subido
   *[other] { $count } han subido
  }
digest-strands-slipped = { $count ->
    [one] { $count } ha bajado
   *[other] { $count } han bajado
  }
digest-strands-legend = La semana pasada: las mismas niñas y niños en los mismos pasos.
digest-strands-legend-own = { digest-strands-legend } Han subido o bajado: en comparación con sus propias cuatro semanas.
