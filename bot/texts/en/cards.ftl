# A counting part without a picture: Start at 35: 35, 40, and so on.
cards-run-in-words = Start at { $first }: { $first }, { $second }, and so on. { $length ->
    [one] { $length } number
   *[other] { $length } numbers
  } in all.
