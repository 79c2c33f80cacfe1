# Not checked by a native speaker.

stop-today-stop = Parar por hoy
stop-today-go-on = Seguir a pesar de todo
stop-today-fine = Se ha parado por hoy. Está bien así.
stop-today-done = Hecho, y cuenta: { $parts }.
stop-today-until = Hoy no llega nada más. Se puede seguir hasta medianoche.
