# A term is a row of week plans that go out by themselves, one after the other.
term-weeks =
  { $count ->
    [one] { $count } week
   *[other] { $count } weeks
  }
# $weeks is "10 weeks".
term-title = { $class }: the term, { $weeks }
term-begins = It begins on { $day }.
term-no-days = No school days ahead.
term-over = It is over; its last plan stays in use.
term-next = The next evening is in week { $week }.
term-by-itself = Each goes out by itself, unless you put another plan in use for that week.

# What a week has that the week before did not have; a list of steps. They follow the week's number and its first day.
term-as-before = as before
term-new = new: { $steps }
term-new-more = new: { $steps } and { $count } more

term-week = Week { $week } of { $of }
term-week-from = Week { $week } of { $of }, from { $day }
term-week-now = The next evening is in this week: a change counts from then.
term-week-over = This week is over.

# Before a term is made. $grade is a grade with its curriculum as published.
term-new-title = { $class }: a new term
term-from-steps =
  { $count ->
    [one] From the steps usual in { $grade }: { $count } step in all, easier ones first.
   *[other] From the steps usual in { $grade }: { $count } steps in all, easier ones first.
  }
term-ask = How many weeks, which of the year’s steps, and from when?
term-passed-over = Weeks without school are passed over. Every week can be changed afterwards.
term-needs-grade = A term is made from the steps that are usual in a grade. Choose the curriculum and the grade first.

# On buttons: which of a year's steps a term is made from, when it begins, and one of its weeks.
term-share-all = The whole year
term-share-first = First third
term-share-second = Second third
term-share-last = Last third
term-make = Make it, from { $day }
term-week-button = Week { $week }

term-moved-on = The term has changed since. Nothing was changed by this tap.
