# Not checked by a native speaker.
report-strands = Lo que se practicó
report-weeks = aciertos, semana a semana
report-dots = un punto por cada tarde con práctica
report-steps = Pequeños pasos siguientes
report-not-said = Lo que esta página no dice
report-page = página { $page } de { $of }
report-child = niño o niña { $number }
report-the-child = El niño o la niña
report-foot = Hecho el { $day } con lo que la familia marcó en casa.

report-lead = { $days ->
    [one] { $name } practicó cálculo mental en casa { $practised } de { $days } día de clase, del { $first } al { $last }.
   *[other] { $name } practicó cálculo mental en casa { $practised } de { $days } días de clase, del { $first } al { $last }.
  }
report-lead-none = { $name } no tiene ninguna tarde marcada en estas semanas, así que todavía no hay nada que contar.
report-pages-done = { $count ->
    [one] Se hizo { $count } página del cuaderno.
   *[other] Se hicieron { $count } páginas del cuaderno.
  }

report-secure = Lo sabe bien: { $steps }.
report-in_between = Va en camino: { $steps }.
report-not_yet = Necesita más tiempo: { $steps }.
report-too_few = Recién empezado, aún es pronto: { $steps }.
report-meeting = { $name } todavía está conociendo: { $facts }.

report-say-together = Para decir juntos en voz alta, una vez al día: { $facts }.
report-go-on = A punto para lo que sigue: { $step }.
report-as-now = Sigan como hasta ahora: unos minutos, y descanso cuando el día fue largo.

report-no-test = No es un examen ni un diagnóstico. No mide la inteligencia de nadie.
report-compared = { $name }: sin comparación con nadie; cada línea trata solo de sus propias tardes.
report-whose-word = Los aciertos son lo que marcó la familia. De una tarde sin marcas no se sabe nada; no es un cero.

report-six-weeks = Últimas 6 semanas
report-twelve-weeks = Últimas 12 semanas
report-since-start = Desde el principio

report-choose-class = { $title }: informes
report-choose-child = { $title }: informe de { $name }
report-every-child = Un PDF con una o dos páginas por cada niño o niña, en palabras que la familia entiende.
report-one-child = Un PDF de una o dos páginas, en palabras que la familia entiende.
report-own-evenings = Trata solo de las tardes propias: no aparece nadie más, ni hay clasificación.
report-choose-span = Elija desde cuándo y hágalo después.
report-sent-one = El informe. Por favor, léalo antes de entregarlo.
report-sent = Informes de { $children } niñas y niños, cada uno en sus propias páginas. Por favor, léalos antes de entregarlos y dé a cada familia solo el suyo.
report-nobody = Todavía no hay nadie en esta clase, así que no hay nada de lo que informar.
