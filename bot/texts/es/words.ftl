# Not checked by a native speaker.
words-minutes = { $count ->
    [one] { $count } minuto
   *[other] { $count } minutos
  }

words-days = del { $first } al { $last }
words-weekdays = de { $from } a { $to }
words-page = página { $page }
words-two-pages = páginas { $first } y { $second }
words-pages = páginas { $from } a { $to }
