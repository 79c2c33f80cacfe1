# Not checked by a native speaker.
pace-pause-title = ¿Una pausa para { $children }?
pace-pause-how = No llega nada hasta el día elegido, a nadie que acompañe. Después sigue solo, y no hay nada que recuperar.
pace-paused-title = Una pausa para { $children }
pace-paused-line = { $child }: la práctica vuelve el { $day }.
pace-running-line = { $child }: sin pausa.
pace-more = { $count ->
    [one] Y un niño o una niña más.
   *[other] Y { $count } más.
  }
pace-paused-until = No llega nada hasta el { $day }.
pace-started-again = La práctica vuelve, desde la próxima tarde.
pace-ask-day = ¿Qué día vuelve la práctica? Envíelo así: 12 de octubre
pace-bad-shape = No pude leer { $typed } como un día. Envíelo así: 12 de octubre
pace-bad-date = { $typed } no es una fecha del calendario. Envíelo así: 12 de octubre
pace-bad-slash = { $typed } puede ser dos fechas. Escriba el mes con una palabra, como 12 de octubre.
pace-bad-weekday = El { $day } es { $weekday }. Envíe el día otra vez.
pace-bad-past = El { $day } ya pasó. Envíe un día del { $first } al { $last }.
pace-bad-far = El { $day } está demasiado lejos: una pausa dura { $most } días como mucho. Envíe un día del { $first } al { $last }.
pace-days-title = ¿Qué días debe llegar la práctica?
pace-days-line = { $child }: { $days }
pace-days-three = { $child }: ahora tres tardes por semana, porque nadie respondió en un tiempo
pace-days-one = { $child }: ahora una tarde por semana, porque nadie respondió en un tiempo
pace-days-paused = { $child }: una pausa hasta el { $day }
pace-days-how = Toque un día para ponerlo o quitarlo. Desde la próxima tarde, para todos los que acompañan.
pace-days-last = Tiene que quedar un día. Para descansar está /pause.
pace-every-day = Cada día de clase, desde la próxima tarde.
pace-fewer-three = Ahora enviamos la práctica tres tardes por semana. Toque para tenerla cada día de clase.
pace-fewer-one = Ahora enviamos la práctica una tarde por semana. Toque para tenerla cada día de clase.
pace-today-paused = { $child }: una pausa hasta el { $day }. /pause la termina.
pace-held = con qué frecuencia llega la práctica
pace-held-daily = cada día de clase
pace-held-three = tres tardes por semana
pace-held-one = una tarde por semana
pace-held-announced = menos tardes desde { $day }
pace-held-kept = lo mantiene el docente
pace-held-paused = pausa hasta { $day }
pace-held-days = solo { $days }
