# A child's own picture: a dot an evening, then a row of bars for each strand, a bar a week.
child-picture-evenings = { $count ->
    [one] { $count } evening in twelve weeks
   *[other] { $count } evenings in twelve weeks
  }
# Under the picture, in small print.
child-picture-footer = This child’s own evenings only. Bars are the share right, as the helper marked it; a short rule is a week without marks.
# $child is "3. Wren".
child-picture-sent = { $child }: own evenings, beside nobody else’s.
child-picture-none = There is nothing to draw yet: no evening of this child was marked in the last twelve weeks.
