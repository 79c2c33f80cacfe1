# Not checked by a native speaker.
general-text-only = Ek kan net teks en knoppies lees. Stuur /help om te sien wat ek kan doen.
general-private-only = Skryf asseblief in ’n private klets aan my. Kinders se uitslae gaan nooit na ’n groep nie.
