# Not checked by a native speaker.
cards-run-in-words = Se empieza en el { $first }: { $first }, { $second }, y así sucesivamente. { $length ->
    [one] { $length } número
   *[other] { $length } números
  } en total.
