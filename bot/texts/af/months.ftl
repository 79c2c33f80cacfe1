# Not checked by a native speaker.
months-practised-term = { $count ->
    [0] Oefening hierdie kwartaal begin met die eerste aand.
    [one] Een aand hierdie kwartaal geoefen.
   *[other] { $count } aande hierdie kwartaal geoefen.
  }
months-practised = { $count ->
    [0] Oefening begin met die eerste aand.
    [one] Een aand tot dusver geoefen.
   *[other] { $count } aande tot dusver geoefen.
  }
months-title = { $name } se { $month }
months-evenings = { $count ->
    [one] Een aand saam geoefen.
   *[other] { $count } aande saam geoefen.
  }
months-secure = Sedert hierdie maand seker van: { $steps }.
months-own = Dit gaan oor u kind se eie aande, sonder vergelyking met ander. /settings skakel dit af.
months-strand = { $strand }: { $right } van { $asked } reg in twaalf weke
