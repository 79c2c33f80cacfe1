# Not checked by a native speaker.
class-now-title = { $title } ahora, { $day }
class-now-no-plan = No hay ningún plan semanal en uso: no se envía nada.
class-now-wobbling = Esta semana, para repasar: { $facts }.
class-now-helpers = { $children ->
    [one] { $joined } de { $children } niño o niña con acompañante.
   *[other] { $joined } de { $children } niñas y niños con acompañante.
  }

class-now-practised-none = Han practicado hoy: { $practised } de { $sent }.
class-now-practised = Han practicado hoy: { $practised } de { $sent } ({ $names }).
class-now-more-names = { $count } más
class-now-rest = { $rest }.
class-now-waiting = { $count } sin marcar todavía
class-now-not-today = { $count } hoy no

class-now-ahead = La práctica de hoy sale a partir de las { $time }.
class-now-past = Hoy a las { $time } no salió ninguna práctica.
class-now-no-drill = Hoy no hay práctica.
class-now-next-day = Hoy no hay práctica. El próximo día de clase es el { $day }.

class-now-plan = { $minutes ->
    [one] En el plan: { $parts }. Alrededor de { $minutes } minuto.
   *[other] En el plan: { $parts }. Unos { $minutes } minutos.
  }

class-now-choose-child = { $title }: ¿la página de quién?
class-now-sign = ✓ ha practicado hoy.
class-now-sign-paged = { class-now-sign } Página { $page } de { $pages }.
class-now-digest-of = Resumen del { $day }
