# Not checked by a native speaker.
pace-buttons-every-day = Elke skooldag
pace-buttons-start-again = Begin nou weer
pace-buttons-until = Tot { $day }
pace-buttons-one-week = Een week
pace-buttons-two-weeks = Twee weke
pace-buttons-other-day = Tot ’n ander dag
pace-buttons-fewer = Minder aande
pace-buttons-keep = Hou daagliks: { $who }
pace-buttons-let-go = Nie meer nie: { $who }
