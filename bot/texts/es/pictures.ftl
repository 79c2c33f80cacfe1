# Not checked by a native speaker.

pictures-start = inicio
pictures-to-say = para decir

pictures-start-at = Empieza en { $number }.
pictures-count-on = Cuenta { $steps }.
pictures-count-back = Cuenta hacia atrás { $steps }.

pictures-score = { $right } de { $asked }
pictures-position = { $card } de { $of }
pictures-seconds =
  { $count ->
    [one] { $count } segundo por tarjeta
   *[other] { $count } segundos por tarjeta
  }
pictures-say-each = Di cada respuesta en voz alta.
pictures-finished = Era la última tarjeta.
pictures-mark-together = Ahora, a marcar entre los dos.
pictures-say-again = Para repetir en el desayuno

pictures-practised = practicó
pictures-not-today = hoy no
pictures-silent = sin respuesta
pictures-unsent = no entregado
pictures-not-asked = sin preguntar

pictures-secure = seguro
pictures-growing = en progreso
pictures-not-yet = todavía no
pictures-too-few = pocos datos

pictures-no-evening = Ninguna tarde todavía este trimestre
pictures-evenings =
  { $count ->
    [one] { $count } tarde este trimestre
   *[other] { $count } tardes este trimestre
  }
pictures-percent = { $hundredths } %
