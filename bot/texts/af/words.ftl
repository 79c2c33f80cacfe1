# Not checked by a native speaker.
words-minutes = { $count ->
    [one] { $count } minuut
   *[other] { $count } minute
  }

words-days = { $first } tot { $last }
words-weekdays = { $from } tot { $to }
words-page = bladsy { $page }
words-two-pages = bladsye { $first } en { $second }
words-pages = bladsye { $from } tot { $to }
