# Not checked by a native speaker.
clock-aid-title = Comment la lire
clock-aid-short = Aiguille courte et épaisse :
clock-aid-at-hour = sur le { $hour }. L’heure est { $hour }.
clock-aid-past-hour = après le { $hour }, avant le { $next }. L’heure est { $hour }.
clock-aid-long = Aiguille longue et fine :
clock-aid-at-top = sur le 12. Aucune minute après l’heure.
clock-aid-minutes = sur le { $numeral }. Compter de cinq en cinq depuis le haut : { $minutes } minutes.
clock-aid-left = Il manque { $left } minutes pour arriver à { $next }.
clock-aid-short-rule = Aiguille courte et épaisse : l’heure qu’elle a atteinte ou dépassée.
clock-aid-long-rule = Aiguille longue et fine : les minutes, de cinq en cinq à partir du 12.
