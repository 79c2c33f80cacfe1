# How many evenings were practised since the term began, or since the first one. A whole sentence.
months-practised-term = { $count ->
    [0] Practice this term begins with the first evening.
    [one] One evening practised this term.
   *[other] { $count } evenings practised this term.
  }
months-practised = { $count ->
    [0] Practice begins with the first evening.
    [one] One evening practised so far.
   *[other] { $count } evenings practised so far.
  }
# $month is a month’s name: November.
months-title = { $name }’s { $month }
months-evenings = { $count ->
    [one] One evening practised together.
   *[other] { $count } evenings practised together.
  }
# $steps are steps of practice in a list: doubles to 5 + 5 and what makes 10.
months-secure = New this month: sure of { $steps }.
months-own = This is about your child’s own evenings, beside nobody else’s. /settings turns it off.
months-strand = { $strand }: { $right } of { $asked } right in twelve weeks
