# Not checked by a native speaker.

one-by-one-place = Teil { $part } von { $parts }: { $title }, Karte { $card } von { $cards }
one-by-one-hint = Antwort sagen, dann „{ $show }“ antippen. Es läuft keine Zeit, nur mit der Ruhe.
one-by-one-clock = Wie spät ist es?
one-by-one-time = { $phrase }, { $figures }
one-by-one-show = Antwort zeigen
one-by-one-right = Gewusst
one-by-one-not-yet = Noch nicht
one-by-one-back = Eine Karte zurück
