# Not checked by a native speaker.
cards-run-in-words = Start bei { $first }: { $first }, { $second } und so weiter. Insgesamt { $length ->
    [one] { $length } Zahl
   *[other] { $length } Zahlen
  }.
