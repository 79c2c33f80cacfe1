# Not checked by a native speaker.
digest-caution = Las marcas las ponen los acompañantes. Una tarde que falta no es un cero. Un resultado no es un diagnóstico.

digest-first-line = { $title }: { $headline }.
digest-no-evenings = no hay tardes de las que hablar
digest-all-left = ya no queda ningún acompañante
digest-none-joined = todavía no se ha unido ninguna familia
digest-practised-three = { $practised ->
    [one] { $practised } de { $joined } practicó tres días o más
   *[other] { $practised } de { $joined } practicaron tres días o más
  }
digest-practised-both = { $practised ->
    [one] { $practised } de { $joined } practicó los dos días
   *[other] { $practised } de { $joined } practicaron los dos días
  }
digest-practised-one = { $practised ->
    [one] { $practised } de { $joined } practicó el único día
   *[other] { $practised } de { $joined } practicaron el único día
  }
digest-ready = para pasar al siguiente paso: { $steps }
digest-none-ready = por ahora ningún cambio de paso
digest-to-call = familias a las que llamar: { $count }

digest-evenings = { $days }: { $ended }.
digest-practised = { $count ->
    [one] { $count } tarde con práctica
   *[other] { $count } tardes con práctica
  }
digest-put-off = { $count ->
    [one] { $count } aplazada
   *[other] { $count } aplazadas
  }
digest-unanswered = { $count } sin respuesta
digest-undelivered = { $count } sin entregar
digest-no-days = En estos siete días no hubo clase.

digest-wobbling = Para repasar: { $facts }.
digest-splitting = Conviene dividir: { $steps }.
digest-workbook = { $count ->
    [one] Cuaderno: { $count } página hecha.
   *[other] Cuaderno: { $count } páginas hechas.
  }
digest-steps-and-more = { $shown } y { $more } más

digest-facts-title = Cálculos para repasar
digest-fact = { $children ->
    [one] { $facts }: { $missed } de { $asked } falladas, por { $children } niño o niña
   *[other] { $facts }: { $missed } de { $asked } falladas, por { $children } niñas y niños
  }
digest-facts-rule = Falladas por dos niñas o niños, o más, o por alguien en dos días.
digest-facts-none = Ninguna que hayan fallado dos niñas o niños, o alguien en dos días.
