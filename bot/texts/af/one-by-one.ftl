# Not checked by a native speaker.

one-by-one-place = Deel { $part } van { $parts }: { $title }, kaart { $card } van { $cards }
one-by-one-hint = Sê die antwoord, tik dan “{ $show }”. Niks loop nie, neem rustig tyd.
one-by-one-clock = Hoe laat is dit?
one-by-one-time = { $phrase }, { $figures }
one-by-one-show = Wys antwoord
one-by-one-right = Reg
one-by-one-not-yet = Nog nie
one-by-one-back = Een kaart terug
