# Not checked by a native speaker.
child-page-none = Todavía no hay ninguna tarde que contar.
child-page-practised = { $days ->
    [one] Ha practicado { $practised } de { $days } día de clase desde el { $first }.
   *[other] Ha practicado { $practised } de { $days } días de clase desde el { $first }.
  }
child-page-week = Últimos siete días: { $said }.
child-page-week-practised = practicó { $days }
child-page-week-not_today = «hoy no» { $days }
child-page-week-silent = sin respuesta { $days }
child-page-week-unsent = sin entregar { $days }

child-page-sure = Domina: { $steps }.
child-page-meeting = Aún está conociendo: { $facts }.
child-page-right = Aciertos en ese tiempo: { $told }.
child-page-tally = { $strand } { $right } de { $asked }
child-page-caution = Lo que ha marcado quien acompaña, comparado solo con su propio pasado. No es un examen ni un diagnóstico.

child-page-family-none = Familia: todavía no participa nadie.
child-page-family-left = Familia: su acompañante se ha dado de baja.
child-page-family-unheard = { $helpers ->
    [one] Familia: { $helpers } acompañante, aún sin noticias.
   *[other] Familia: { $helpers } acompañantes, aún sin noticias.
  }
child-page-family-heard = { $helpers ->
    [one] Familia: { $helpers } acompañante, últimas noticias el { $day }.
   *[other] Familia: { $helpers } acompañantes, últimas noticias el { $day }.
  }
child-page-family-unreached-unheard = { $helpers ->
    [one] Familia: { $helpers } acompañante, los mensajes ya no llegan, aún sin noticias.
   *[other] Familia: { $helpers } acompañantes, los mensajes ya no llegan, aún sin noticias.
  }
child-page-family-unreached-heard = { $helpers ->
    [one] Familia: { $helpers } acompañante, los mensajes ya no llegan, últimas noticias el { $day }.
   *[other] Familia: { $helpers } acompañantes, los mensajes ya no llegan, últimas noticias el { $day }.
  }

child-page-say = { $child }: para decir en voz alta
child-page-say-how = Primero lo menos seguro. Con un minuto basta: decirlo, repetirlo y seguir.
child-page-say-none = Todavía no se ha marcado nada.

child-page-books-done = Cuaderno: todo hecho.
child-page-book = Cuaderno: { $book }, en la página { $page } de { $last }.
