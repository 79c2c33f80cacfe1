words-minutes = { $count ->
    [one] { $count } minute
   *[other] { $count } minutes
  }

# Days in a sentence or a heading. $first and $last are short dates: Mon 14 Sept. One day alone stands without any word before it.
words-days = { $first } to { $last }
# School days of a week. $from and $to are short weekdays: Mon to Fri. Two days alone are a list: Mon and Wed.
words-weekdays = { $from } to { $to }
words-page = page { $page }
words-two-pages = pages { $first } and { $second }
words-pages = pages { $from } to { $to }
