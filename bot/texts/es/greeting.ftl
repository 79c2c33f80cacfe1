# Not checked by a native speaker.
greeting-ask = Envíe una nota de voz o un vídeo de hasta { $seconds } segundos y { $megabytes } MB, o un texto de hasta { $characters } caracteres. Las familias lo reciben tal como lo envía. Usted lo ve antes, y nada sale hasta la próxima tarde.
greeting-heading = { $class }: un saludo de su docente
greeting-none = { $class }: sin saludo
greeting-none-note = Una nota de voz, un vídeo corto o un texto suyo puede llegar a cada familia, justo antes de la práctica.

greeting-title = { $class }: saludo
greeting-text-first = Un texto, justo antes de la primera práctica de la semana de cada familia.
greeting-text-every = Un texto, justo antes de cada práctica.
greeting-voice-first = Una nota de voz, justo antes de la primera práctica de la semana de cada familia.
greeting-voice-every = Una nota de voz, justo antes de cada práctica.
greeting-video-first = Un vídeo, justo antes de la primera práctica de la semana de cada familia.
greeting-video-every = Un vídeo, justo antes de cada práctica.
greeting-over = Su semana ya pasó: no se envía más. Elija otra semana para enviarlo de nuevo.
greeting-from = Desde el { $first }, hasta que lo quite.
greeting-on = Solo el { $day }.
greeting-days = Del { $first } al { $last }; después termina solo.
greeting-other-bot = Se grabó para otra cuenta de este bot y no se envía. Envíelo de nuevo, por favor.
greeting-once = Llega una vez por familia, aunque tenga a dos en la clase.
greeting-week = Semana del { $monday }
greeting-removed = Retirado. Ya no se envía.

greeting-use-voice = ¿Usar esta nota de voz como saludo de { $class }?
greeting-use-video = ¿Usar este vídeo como saludo de { $class }?
greeting-use-voice-which = ¿Usar esta nota de voz como saludo de una clase? Elija la clase.
greeting-use-video-which = ¿Usar este vídeo como saludo de una clase? Elija la clase.
greeting-not-used = No se usa. No ha cambiado nada.
greeting-used = Ya es el saludo de { $class }. Las familias lo reciben así:
greeting-gone = Esa grabación ya no está pendiente. Abra «{ $button }» para ver cuál se usa, o envíela de nuevo.

greeting-bad-form = Puedo pasar notas de voz y vídeos normales, no vídeos redondos ni archivos de música.
greeting-bad-seconds = { $seconds ->
    [one] Dura { $seconds } segundo; un saludo dura { $most } como máximo.
   *[other] Dura { $seconds } segundos; un saludo dura { $most } como máximo.
  }
greeting-bad-megabytes = Son unos { $megabytes } MB; un saludo tiene { $most } como máximo, porque las familias pagan sus datos.
greeting-please-send = Envíe, por favor, una nota de voz o un vídeo de hasta { $seconds } segundos y { $megabytes } MB, o un texto de hasta { $characters } caracteres.
greeting-long = { $typed } tiene { $length } caracteres; un saludo tiene de 1 a { $most }. Envíe uno más corto, por favor.
greeting-empty = No he visto ninguna palabra ahí. { $send }
greeting-not-passed = El servicio de chat no me deja pasar esto. Grábelo y envíelo de nuevo, por favor.
greeting-not-sent = { $class }: su saludo no se ha enviado
greeting-not-sent-why = Se grabó para otra cuenta de este bot y no puedo pasarlo. Las prácticas salieron como siempre.
greeting-not-sent-again = Envíelo otra vez, por favor: /class y luego «{ $button }».
