# Not checked by a native speaker.
settings-title = Sus ajustes
settings-child = { $name }: { $days } a las { $time }. { $practised }
settings-child-pace = { $name }: { $pace }. { $practised }
settings-more-children = { $count ->
    [one] Y un niño o una niña más.
   *[other] Y { $count } más.
  }
settings-data = Enviado a usted este mes: unos { $amount }. Su teléfono puede haber cargado más o menos.
settings-scope = Los interruptores valen solo para este teléfono; la hora, para la familia.
settings-commands = Más: /language, /share, /mydata, /erase, /stop
settings-kilobytes = { $amount } kB
settings-megabytes = { $amount } MB
settings-time = Práctica a las { $time }
settings-way = Cómo se ven las tarjetas
settings-days = Qué días
settings-pause = Pausa
settings-back = A los ajustes
settings-switch-bigger = Letra más grande
settings-switch-noTiming = Sin segundos
settings-switch-quiet = Sin sonido
settings-switch-clockAid = Reloj explicado
settings-switch-monthly = Imagen del mes
settings-on-bigger = Letra más grande desde la próxima pantalla.
settings-on-noTiming = Sin vídeo y sin segundos desde la próxima pantalla.
settings-on-quiet = Lo que llega solo ya no suena.
settings-on-clockAid = Las respuestas de reloj se explican con un dibujo.
settings-on-monthly = Con la última tarde del mes llega una imagen de las tardes del niño o la niña.
settings-off-bigger = Letra normal desde la próxima pantalla.
settings-off-noTiming = Las tarjetas vuelven al ritmo de la clase.
settings-off-quiet = Los mensajes suenan como diga su teléfono.
settings-off-clockAid = Los relojes, otra vez sin dibujo.
settings-off-monthly = Sin imagen del mes.
settings-sibling-ask = ¿Desde qué edad puede acompañar un hermano o una hermana?
settings-sibling-now = Ahora, desde los { $age }. Lo decide su escuela y se dice a quien se une; no se saca a nadie que ya esté.
settings-sibling = Edad de hermanos que ayudan
