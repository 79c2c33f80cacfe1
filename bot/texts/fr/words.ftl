# Not checked by a native speaker.
words-minutes = { $count ->
    [one] { $count } minute
   *[other] { $count } minutes
  }

words-days = du { $first } au { $last }
words-weekdays = du { $from } au { $to }
words-page = page { $page }
words-two-pages = pages { $first } et { $second }
words-pages = pages { $from } à { $to }
