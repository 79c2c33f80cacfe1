# Not checked by a native speaker.
child-picture-evenings = { $count ->
    [one] { $count } tarde en doce semanas
   *[other] { $count } tardes en doce semanas
  }
child-picture-footer = Solo sus propias tardes. Las barras son la parte acertada, según marcó quien acompaña; una raya corta es una semana sin marcas.
child-picture-sent = { $child }: sus propias tardes, sin compararlas con las de nadie.
child-picture-none = Aún no hay nada que dibujar: en las últimas doce semanas no se marcó ninguna de sus tardes.
