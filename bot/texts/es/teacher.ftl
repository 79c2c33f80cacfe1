# Not checked by a native speaker.
teacher-welcome = Le damos la bienvenida. Ya es docente aquí.
teacher-welcome-next = Ahora cree su clase: son unos tres minutos. Con /newclass puede hacerlo cuando quiera.

teacher-ask-title = ¿Cómo se llama la clase? Por ejemplo: Clase Martín Pescador
teacher-ask-roster = Envíe los apodos de niñas y niños, uno por línea, de { $most } caracteres como máximo. Solo apodos, sin apellidos. O envíe la lista como archivo XLSX o CSV.
teacher-ask-evening = ¿A qué hora sale la práctica? De { $from } a { $to }, por ejemplo 17:30. Cada familia puede elegir la suya.
teacher-ask-nudge = ¿A qué hora sale el único recordatorio amable, si nadie ha marcado nada? Al menos { $gap } minutos después de la práctica y como muy tarde a las { $latest }.
teacher-ask-digest = ¿A qué hora llega su resumen? Por ejemplo 20:00. Si es después de la práctica, incluye también esa tarde.

teacher-children = { $children ->
    [one] { $children } niño o niña, { $joined } con acompañante
   *[other] { $children } niñas y niños, { $joined } con acompañante
  }
teacher-week = Práctica { $weekdays } a las { $evening }, recordatorio a las { $nudge } ({ $zone })
teacher-digest = Resumen: { $weekday } a las { $time }
teacher-book = Cuaderno: { $book }, { $range }, { $pages } al día
teacher-no-book = Cuaderno: ninguno
teacher-no-plan = Todavía no hay plan semanal: no se envía nada.
teacher-no-class = Todavía no tiene ninguna clase. Cree una con /newclass.

teacher-times = { $class }: días y horas
teacher-times-days = Días de clase: { $weekdays }
teacher-times-drill = Práctica a las { $evening }, recordatorio a las { $nudge }
teacher-times-zone = Zona horaria: { $zone }
teacher-times-tap = Toque lo que quiera cambiar.

teacher-bad-time = { $typed } no es una hora. Envíe horas y minutos de 00:00 a 23:59, como 17:30.
teacher-bad-zone = No conozco la zona horaria { $typed }.
teacher-bad-zone-send = Envíe una ciudad que dé nombre a una zona horaria, como Nairobi, o una zona como Europe/London.
teacher-saved = Guardado. Si la hora de la práctica ya ha pasado hoy, vale desde mañana.
teacher-class-made = La clase está lista.
teacher-class-made-next = Arriba están sus días y horas de costumbre; cambie lo que no convenga. Después: los apodos y luego el plan semanal.
