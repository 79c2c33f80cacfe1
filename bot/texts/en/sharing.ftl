sharing-ask = Shall another adult help { $name }?
# $days is 2.
sharing-what = A link opens once, within { $days } days. Whoever opens it reads the notice and agrees, then gets { $name }’s drills and sees the marks.
sharing-helpers = { $count ->
    [one] { $name } has one helper now. The teacher sees the number, no name.
   *[other] { $name } has { $count } helpers now. The teacher sees the number, no names.
  }
# $until is a short date and a time.
sharing-open = A link of yours is open until { $until }. A new one takes its place.
sharing-not-sibling = A link for another adult comes from a parent or another adult. Please ask one of them.
sharing-many = { $name } has { $most } helpers, as many as there can be this way. The teacher can give out one more slip.
sharing-week = { $most } links a week can be passed on, and this week’s are given out. The teacher can give out one more slip.
sharing-whom = Whom shall another adult help?
sharing-names = You help { $names }.
sharing-link = For one more helper of { $name }
sharing-pass-on = Give this link to one adult you know well, and to nobody else:
sharing-until = It opens once, until { $until }. /stop ends your own part; theirs goes on.
sharing-make = Make the link
