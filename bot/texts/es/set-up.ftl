# Not checked by a native speaker.
set-up-zone = ¿En qué zona horaria están las familias? Toque el reloj que va bien o envíe una ciudad, como Nairobi o Europe/London.
set-up-zones = Hay varias. ¿Cuál es?
set-up-first-plan = { $class }: el primer plan
set-up-grade = { $curriculum }. ¿Qué curso?
set-up-curriculum = ¿Qué currículo se parece más al suyo?
set-up-suggest = Propongo cinco pasos habituales en esta época del curso. Usted los revisa antes de que salga nada.
set-up-no-steps = Para ese curso no se nombra ningún paso. Abra el plan semanal y elija usted las partes.
set-up-cancelled = Todo queda como estaba.
set-up-nothing-asked = Ya no hay nada pendiente de respuesta.
set-up-gone-on = Esa clase ya se creó o se abandonó. Envíe /class para ver dónde está.
