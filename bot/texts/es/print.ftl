# Not checked by a native speaker.
print-a4 = A4
print-letter = Carta
print-on = Imprimir en { $paper }

print-title = { $title }: imprimir
print-slips-none = Hojas de acceso: toda la clase tiene acompañante.
print-slips = { $missing ->
    [one] Hojas de acceso: para { $missing } niño o niña sin acompañante. Los enlaces que ya se le dieron dejan de valer.
   *[other] Hojas de acceso: para { $missing } niñas y niños sin acompañante. Los enlaces que ya se les dieron dejan de valer.
  }
print-cards = Tarjetas: las del plan semanal, para recortar, y todas las respuestas.
print-sheets-none = Fichas de práctica: una sin nombre.
print-sheets = { $offline ->
    [one] Fichas de práctica: para { $offline } niño o niña cuya familia no recibe mensajes, y una sin nombre.
   *[other] Fichas de práctica: para { $offline } niñas y niños cuyas familias no reciben mensajes, y una sin nombre.
  }
print-squares = Tablas de números: del 1 al 100 y del 101 al 200.

print-slips-sent = { $children ->
    [one] Hojas de acceso para { $children } niño o niña. Recórtelas y dé a cada familia solo la suya.
   *[other] Hojas de acceso para { $children } niñas y niños. Recórtelas y dé a cada familia solo la suya.
  }
print-slips-work = Valen para hasta cuatro acompañantes, hasta el { $until }. No guardo copia: las hojas nuevas sustituyen a estas.
print-cards-sent = Imprima por las dos caras y dé la vuelta por el lado largo: cada respuesta queda detrás de su tarjeta. Al final van todas las respuestas juntas.
print-sheet-sent = Una ficha de práctica sin nombre.
print-sheets-sent = { $children ->
    [one] Fichas de práctica para { $children } niño o niña, y una sin nombre. Dé a cada familia solo la suya.
   *[other] Fichas de práctica para { $children } niñas y niños, y una sin nombre. Dé a cada familia solo la suya.
  }
print-squares-sent = Tablas de números, del 1 al 100 y del 101 al 200.

print-no-slips = Toda la clase tiene acompañante, o todavía no hay nadie en la lista. No hay nada que imprimir.
print-no-plan = Todavía no hay ningún plan semanal en uso. Haga uno en «{ $button }» e imprima después.
print-no-days = Ni esta semana ni la próxima hay clase. Imprima cuando el descanso esté a punto de acabar.

print-code-wrong = Eso parece un código de acceso, pero una letra o cifra no es correcta.
print-code-length = Eso parece un código de acceso, pero he leído { $letters } letras y cifras; un código tiene { $length }.
print-code-again = Por favor, compárelo con su hoja de acceso y envíelo de nuevo. Las letras O, I, L y U no se usan nunca.
