# Not checked by a native speaker.
months-practised-term = { $count ->
    [0] La práctica de este trimestre empieza con la primera tarde.
    [one] Una tarde practicada este trimestre.
   *[other] { $count } tardes practicadas este trimestre.
  }
months-practised = { $count ->
    [0] La práctica empieza con la primera tarde.
    [one] Una tarde practicada hasta ahora.
   *[other] { $count } tardes practicadas hasta ahora.
  }
months-title = { $name }: { $month }
months-evenings = { $count ->
    [one] Una tarde de práctica en compañía.
   *[other] { $count } tardes de práctica en compañía.
  }
months-secure = Con seguridad desde este mes: { $steps }.
months-own = Trata solo de las tardes del niño o la niña, sin compararlas con las de nadie. /settings lo desactiva.
months-strand = { $strand }: { $right } de { $asked } bien en doce semanas
