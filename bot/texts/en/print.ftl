# Names of paper sizes.
print-a4 = A4
print-letter = Letter
# On a button.
print-on = Print { $paper }

print-title = { $title }: print
# The lines begin with what the buttons below them are called.
print-slips-none = Join slips: every child has a helper.
print-slips = { $missing ->
    [one] Join slips: for { $missing } child without a helper. Links given out before for these children stop working.
   *[other] Join slips: for { $missing } children without a helper. Links given out before for these children stop working.
  }
print-cards = Cards: those of the week plan, to cut out, and all answers.
print-sheets-none = Practice sheets: one without a name.
print-sheets = { $offline ->
    [one] Practice sheets: for { $offline } child whose family gets no messages, and one without a name.
   *[other] Practice sheets: for { $offline } children whose family gets no messages, and one without a name.
  }
print-squares = Number squares: 1 to 100 and 101 to 200.

print-slips-sent = { $children ->
    [one] Join slips for { $children } child. Cut them apart and give each family only its own.
   *[other] Join slips for { $children } children. Cut them apart and give each family only its own.
  }
# $until is a short date.
print-slips-work = They work for up to four helpers, until { $until }. I keep no copy: new slips replace these.
print-cards-sent = Print on both sides and turn over the long edge: each answer is behind its card. The answers together come last.
print-sheet-sent = A practice sheet without a name.
print-sheets-sent = { $children ->
    [one] Practice sheets for { $children } child, and one without a name. Give each family only its own.
   *[other] Practice sheets for { $children } children, and one without a name. Give each family only its own.
  }
print-squares-sent = Number squares, 1 to 100 and 101 to 200.

print-no-slips = Every child has a helper, or there are no children yet. Nothing to print.
# $button is the label of the button that leads to the plan.
print-no-plan = There is no week plan in use yet. Make one under { $button }, then print.
print-no-days = There is no school day this week or next. Print when the break is nearly over.

# A join code typed with a mistake: $letters letters and figures were read instead of $length.
print-code-wrong = That looks like a join code, but one letter or figure is not right.
print-code-length = That looks like a join code, but I read { $letters } letters and figures; a code has { $length }.
print-code-again = Please compare it with your slip and send it again. The letters O, I, L and U are never used.
