# Not checked by a native speaker.
words-minutes = { $count ->
    [one] { $count } Minute
   *[other] { $count } Minuten
  }

words-days = { $first } bis { $last }
words-weekdays = { $from } bis { $to }
words-page = Seite { $page }
words-two-pages = Seiten { $first } und { $second }
words-pages = Seiten { $from } bis { $to }
