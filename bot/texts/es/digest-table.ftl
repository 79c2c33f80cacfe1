# Not checked by a native speaker.
digest-table-number = número
digest-table-nickname = apodo
digest-table-days-practised = días con práctica
digest-table-right = { $strand }: aciertos
digest-table-asked = { $strand }: preguntas
digest-table-pages = páginas
digest-table-over-weeks = { $strand } en cuatro semanas

digest-table-practised = practicó
digest-table-not_today = hoy no
digest-table-silent = sin respuesta
digest-table-unsent = no entregado

digest-table-rising = sube
digest-table-steady = estable
digest-table-falling = baja
digest-table-too_little = muy poco para decirlo
digest-table-growth = { $evenings ->
    [one] { $trend } ({ $evenings } tarde)
   *[other] { $trend } ({ $evenings } tardes)
  }
