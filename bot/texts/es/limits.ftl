# Not checked by a native speaker.
limits-codes-paused = Ha enviado demasiados códigos que no funcionan. Inténtelo otra vez en { $wait } o pida un enlace nuevo al docente.
limits-left-out = Llegaron muchos mensajes suyos a la vez y he dejado algunos sin atender.
limits-what-is-kept = Lo que contesté está guardado. Espere un momento y envíe /today o /class para ver cómo está todo.
