# Not checked by a native speaker.

term-weeks =
  { $count ->
    [one] { $count } semana
   *[other] { $count } semanas
  }
term-title = { $class }: el trimestre, { $weeks }
term-begins = Empieza el { $day }.
term-no-days = No hay días de clase por delante.
term-over = Ha terminado; su último plan sigue en uso.
term-next = La próxima tarde cae en la semana { $week }.
term-by-itself = Cada una sale sola, salvo que aplique otro plan para esa semana.

term-as-before = como antes
term-new = nuevo: { $steps }
term-new-more = nuevo: { $steps } y { $count } más

term-week = Semana { $week } de { $of }
term-week-from = Semana { $week } de { $of }, desde el { $day }
term-week-now = La próxima tarde cae en esta semana: un cambio vale desde entonces.
term-week-over = Esta semana ya ha pasado.

term-new-title = { $class }: un trimestre nuevo
term-from-steps =
  { $count ->
    [one] Con los pasos habituales en { $grade }: { $count } paso en total, primero los más fáciles.
   *[other] Con los pasos habituales en { $grade }: { $count } pasos en total, primero los más fáciles.
  }
term-ask = ¿Cuántas semanas, qué pasos del curso y desde cuándo?
term-passed-over = Las semanas sin clase se saltan. Después se puede cambiar cada semana.
term-needs-grade = Un trimestre se hace con los pasos habituales de un curso. Elija antes el currículo y el curso.

term-share-all = Todo el curso
term-share-first = Primer tercio
term-share-second = Segundo tercio
term-share-last = Último tercio
term-make = Crearlo, desde el { $day }
term-week-button = Semana { $week }

term-moved-on = El trimestre ha cambiado entretanto. No se ha cambiado nada.
