# Not checked by a native speaker.

stop-today-stop = Arrêter pour aujourd’hui
stop-today-go-on = Continuer quand même
stop-today-fine = On s’arrête là pour aujourd’hui. C’est très bien ainsi.
stop-today-done = Fait, et cela compte : { $parts }.
stop-today-until = Rien d’autre ne viendra aujourd’hui. On peut continuer jusqu’à minuit.
