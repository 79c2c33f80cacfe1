words-minutes = { $count ->
    [one] { $count } minute
   *[other] { $count } minutes
  }
