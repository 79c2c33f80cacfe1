# Headings of a table for a spreadsheet.
digest-table-number = number
digest-table-nickname = nickname
digest-table-days-practised = days practised
digest-table-right = { $strand } right
digest-table-asked = { $strand } asked
digest-table-pages = pages
digest-table-over-weeks = { $strand } over four weeks

# What a day's cell says.
digest-table-practised = practised
digest-table-not_today = not today
digest-table-silent = no answer
digest-table-unsent = not delivered

# Where a child's own scores go, and how many evenings say so.
digest-table-rising = rising
digest-table-steady = steady
digest-table-falling = falling
digest-table-too_little = too little to tell
digest-table-growth = { $evenings ->
    [one] { $trend } ({ $evenings } evening)
   *[other] { $trend } ({ $evenings } evenings)
  }
