plan-stand-title = { $class }: week plan
plan-stand-nothing = Nothing yet. Add a part.

# $minutes is "12 minutes"; $book is a workbook's title, $pages how many pages of it a day.
plan-stand-evening = About { $minutes } an evening.
plan-stand-evening-pages =
  { $pages ->
    [one] About { $minutes } an evening, then { $pages } page of { $book }.
   *[other] About { $minutes } an evening, then { $pages } pages of { $book }.
  }

plan-stand-full = { $max } parts are the most: remove one to add another.

# Changes of the plan that are not in use yet, by where they come from.
plan-stand-draft-teacher = Changed, not in use yet.
plan-stand-draft-proposal = As the digest proposes, not in use yet.
plan-stand-draft-scheme = As in the term, not in use yet.

# The plan in use, by where it comes from. A term is a row of week plans made beforehand.
plan-stand-in-use = In use.
plan-stand-proposed = In use, as the digest proposed.
plan-stand-term-over = In use. The term is over; its last plan stays.
plan-stand-term = In use, from the term.
plan-stand-term-week = In use, from the term: week { $week } of { $of }.
plan-stand-until-term = In use until the term begins.
plan-stand-instead = In use this week instead of the term’s week { $week } of { $of }.
