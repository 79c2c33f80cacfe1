# A list of nicknames that a teacher sent. $value is one of them, in quotation marks.
roster-problems = Nothing was added yet. Please mend this and send the whole list again:
roster-line-long = Line { $line }: { $value } has { $length } characters, at most { $most }. Shorten it.
roster-line-twice = Line { $line }: { $value } is also on line { $first }. Add a letter to one of them.
roster-line-present = Line { $line }: { $value } is in the class already. Leave it out or add a letter.
# The same in a spreadsheet.
roster-row-long = Row { $line }: { $value } has { $length } characters, at most { $most }. Shorten it.
roster-row-twice = Row { $line }: { $value } is also on row { $first }. Add a letter to one of them.
roster-row-present = Row { $line }: { $value } is in the class already. Leave it out or add a letter.
# The last line of a list of problems.
roster-and-more = and { $more } more
roster-empty = I found no nicknames in that.
# Always more than one.
roster-too-many = That is { $sent } nicknames; with the { $present } already there it is more than { $most }.
roster-send-fewer = Nothing was added. Send fewer, or make a second class.

roster-links = One link for each child. Give each family only its own.
roster-links-note = A link works for up to four helpers, for 60 days. I keep no copy: a new link replaces the old one.
roster-all-have = Every child has a helper. To add one, make a new link for that child.
roster-without = { $children ->
    [one] { $children } child has no helper.
   *[other] { $children } children have no helper.
  }
roster-make-links = Make new links for them? Links given out before for these children stop working.
roster-links-made = Links were made since this was shown; they are further down. If no list came, tap once more.

roster-added = { $children ->
    [one] { $children } child added. How will the families join?
   *[other] { $children } children added. How will the families join?
  }
# $button is the label of a button.
roster-by-slip = { $button }: a join slip for each child, on paper.
roster-by-link = { $button }: a link for each child, to send on.
roster-not-yet = Nothing is made until you ask. What you make later ends what you made before.
# $nickname is in quotation marks; it may be a first name and a surname.
roster-surname = More than one word: { $nickname }. Nicknames only, please, no surnames.
roster-surnames = More than one word: { $nickname } and { $more } more. Nicknames only, please, no surnames.
