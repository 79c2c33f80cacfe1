# Not checked by a native speaker.

one-by-one-place = Parte { $part } de { $parts }: { $title }, tarjeta { $card } de { $cards }
one-by-one-hint = Se dice la respuesta y luego se toca «{ $show }». Nada corre, con calma.
one-by-one-clock = ¿Qué hora es?
one-by-one-time = { $phrase }, { $figures }
one-by-one-show = Ver la respuesta
one-by-one-right = La sabe
one-by-one-not-yet = Todavía no
one-by-one-back = Una tarjeta atrás
