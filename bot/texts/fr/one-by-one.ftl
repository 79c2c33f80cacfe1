# Not checked by a native speaker.

one-by-one-place = Partie { $part } sur { $parts } : { $title }, carte { $card } sur { $cards }
one-by-one-hint = Dire la réponse, puis toucher « { $show } ». Rien ne presse, prenez votre temps.
one-by-one-clock = Quelle heure est-il ?
one-by-one-time = { $phrase }, { $figures }
one-by-one-show = Voir la réponse
one-by-one-right = Trouvé
one-by-one-not-yet = Pas encore
one-by-one-back = Une carte en arrière
