# Under every digest, picture and printed week: what a score is not.
digest-caution = Marks are the helpers’ word. A missing evening is missing, not a nought. A score is not a diagnosis.

# The first line. $title is the class's name; $headline is made of the next messages, with semicolons between.
digest-first-line = { $title }: { $headline }.
digest-no-evenings = no evenings to tell of
digest-all-left = every helper has left
digest-none-joined = no family has joined yet
# Of $joined children with a helper, $practised did so often enough.
digest-practised-three = { $practised } of { $joined } practised on three days or more
digest-practised-both = { $practised } of { $joined } practised on both days
digest-practised-one = { $practised } of { $joined } practised on the one day
# $steps are titles of steps, with semicolons between.
digest-ready = ready to move up: { $steps }
digest-none-ready = nothing to move up yet
digest-to-call = families to call: { $count }

# $days is one date or two; $ended is made of the next four, with commas between.
digest-evenings = { $days }: { $ended }.
digest-practised = { $count ->
    [one] { $count } evening practised
   *[other] { $count } evenings practised
  }
digest-put-off = { $count } put off
digest-unanswered = { $count } without an answer
digest-undelivered = { $count } not delivered
digest-no-days = No school days in these seven days.

# $facts are sums with their answers, the most doubtful first.
digest-wobbling = Wobbling: { $facts }.
# A step at which part of the class is ready to go on and part is not.
digest-splitting = Worth splitting: { $steps }.
digest-workbook = { $count ->
    [one] Workbook: { $count } page done.
   *[other] Workbook: { $count } pages done.
  }
# $shown are titles of steps.
digest-steps-and-more = { $shown } and { $more } more

digest-facts-title = Facts to look at
# $children is how many children missed it.
digest-fact = { $children ->
    [one] { $facts }: missed { $missed } of { $asked }, by one child
   *[other] { $facts }: missed { $missed } of { $asked }, by { $children } children
  }
digest-facts-rule = Missed by two children or more, or by one on two days.
digest-facts-none = None that was missed by two children, or by one on two days.
