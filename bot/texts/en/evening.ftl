# The first line of every evening's message: Wren · Tuesday.
evening-heading = { $child } · { $day }
# $minutes is "3 minutes"; $parts a list of what is practised: adding within 10, halves and clock.
evening-offer = About { $minutes }: { $parts }.
# $pages is a workbook with its pages: Pebble Path, pages 14 and 15.
evening-then-pages = Then { $pages }.
evening-nudge = Still time for a few minutes tonight, if it suits.
evening-reminder = You asked for a reminder. Ready when you are.
# $time is a time of day: 18:00.
evening-later-at = You asked for one reminder, at { $time }.
evening-not-today = Not today. That is fine.

# $title says what is practised.
evening-part = Part { $part } of { $of }: { $title }
evening-count = Count aloud together: start at { $start }, { $length ->
    [one] { $length } number
   *[other] { $length } numbers
  } in all. Stop at the first slip.
# Cards with a sum or a clock. $seconds is 2 to 15.
evening-say = Say each answer aloud, about { $seconds } seconds a card. No rush.
evening-say-untimed = Say each answer aloud, as long as it takes.
# Cards with a number word on them.
evening-read = Read each word aloud and show or write the number, about { $seconds } seconds a card. No rush.
evening-read-untimed = Read each word aloud and show or write the number, as long as it takes.

evening-tap-last = Tap the last number that was right.
# $done is the label of the button below.
evening-tap-missed = Tap the cards that were missed (✗), then { $done }. Now: { $right } of { $asked }.
evening-ask-pages = { $pages }. How many pages were done?

# A part's line in a result. $compared is one of the next four messages.
evening-part-result = { $part }: { $right } of { $asked }, { $compared }
evening-first-time = first time at this
evening-better = { $by } more than the best so far
evening-same = same as the best so far
evening-below = best so far { $best }
# Under the result's picture.
evening-own-only = Compared with this child’s own evenings only.
evening-thanks = Thank you. That was practice well spent.

evening-elsewhere-done = Practised with another helper.
evening-elsewhere-now = Another helper is marking this just now.
evening-closed = This day is over and its drill is closed. Send /today for today’s.
evening-what-to-change = What would you like to change? The earlier marks are kept beside it.
evening-other-message = Goes on in the other message about this evening.
