# Not checked by a native speaker.
cards-run-in-words = On commence à { $first } : { $first }, { $second }, et ainsi de suite. { $length ->
    [one] { $length } nombre
   *[other] { $length } nombres
  } en tout.
