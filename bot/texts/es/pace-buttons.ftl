# Not checked by a native speaker.
pace-buttons-every-day = Cada día de clase
pace-buttons-start-again = Seguir ahora
pace-buttons-until = Hasta el { $day }
pace-buttons-one-week = Una semana
pace-buttons-two-weeks = Dos semanas
pace-buttons-other-day = Hasta otro día
pace-buttons-fewer = Menos tardes
pace-buttons-keep = Cada día: { $who }
pace-buttons-let-go = Ya no: { $who }
