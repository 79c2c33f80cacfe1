# Not checked by a native speaker.
evening-heading = { $child } · { $day }
evening-offer = Cerca de { $minutes }: { $parts }.
evening-then-pages = Después, { $pages }.
evening-nudge = Hoy aún queda tiempo para unos minutos, si viene bien.
evening-reminder = Aquí está el recordatorio que pidió. Empiecen cuando quieran.
evening-later-at = Pidió un recordatorio: llegará a las { $time }.
evening-not-today = Hoy no. No pasa nada.

evening-part = Parte { $part } de { $of }: { $title }
evening-count = Cuenten juntos en voz alta: empiecen en el { $start }, { $length ->
    [one] { $length } número
   *[other] { $length } números
  } en total. Paren en el primer error.
evening-say = Decir cada respuesta en voz alta, unos { $seconds } segundos por tarjeta. Sin prisa.
evening-say-untimed = Decir cada respuesta en voz alta, con todo el tiempo que haga falta.
evening-read = Leer cada palabra en voz alta y enseñar o escribir el número, unos { $seconds } segundos por tarjeta. Sin prisa.
evening-read-untimed = Leer cada palabra en voz alta y enseñar o escribir el número, con todo el tiempo que haga falta.

evening-tap-last = Toque el último número correcto.
evening-tap-missed = Toque las tarjetas falladas (✗) y luego «{ $done }». Ahora: { $right } de { $asked }.
evening-ask-pages = { $pages }. ¿Cuántas páginas se han hecho?

evening-part-result = { $part }: { $right } de { $asked }, { $compared }
evening-first-time = primera vez con esto
evening-better = { $by } más que su mejor marca
evening-same = igual que su mejor marca
evening-below = su mejor marca: { $best }
evening-own-only = Comparado solo con sus propias tardes.
evening-thanks = Gracias. Ha sido un buen rato de práctica.

evening-elsewhere-done = Ya se ha practicado con otro acompañante.
evening-elsewhere-now = Otro acompañante lo está marcando en este momento.
evening-closed = Este día ya terminó y su práctica está cerrada. Envíe /today para ver la de hoy.
evening-what-to-change = ¿Qué quiere cambiar? Lo marcado antes se conserva al lado.
evening-other-message = Sigue en el otro mensaje de esta tarde.
