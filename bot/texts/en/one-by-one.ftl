one-by-one-place = Part { $part } of { $parts }: { $title }, card { $card } of { $cards }
# $show is what the button under it says.
one-by-one-hint = Say the answer, then tap “{ $show }”. Nothing runs, take your time.
one-by-one-clock = What time is it?
# The time in words of the class’s language, and in figures.
one-by-one-time = { $phrase }, { $figures }
one-by-one-show = Show answer
one-by-one-right = Got it
one-by-one-not-yet = Not yet
one-by-one-back = Back one card
