# Between things that hold commas themselves, in one sentence. Its blanks count.
clauses-between = { "; " }
# $shown are such things; $more is how many are left out.
clauses-and-more = { $shown }; and { $more } more
