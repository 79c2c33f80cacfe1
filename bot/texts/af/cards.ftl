# Not checked by a native speaker.
cards-run-in-words = Begin by { $first }: { $first }, { $second }, ensovoorts. Altesaam { $length ->
    [one] { $length } getal
   *[other] { $length } getalle
  }.
