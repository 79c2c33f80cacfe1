# Not checked by a native speaker.
pace-buttons-every-day = Chaque jour d’école
pace-buttons-start-again = Reprendre maintenant
pace-buttons-until = Jusqu’au { $day }
pace-buttons-one-week = Une semaine
pace-buttons-two-weeks = Deux semaines
pace-buttons-other-day = Jusqu’à un autre jour
pace-buttons-fewer = Moins de soirs
pace-buttons-keep = Chaque jour : { $who }
pace-buttons-let-go = Plus maintenant : { $who }
