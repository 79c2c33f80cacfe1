# How far apart the numbers of a counting run are: what follows "count" or "count on". It stands in the places called $steps.
steps-size =
  { $step ->
    [1] in ones
    [2] in twos
    [3] in threes
    [4] in fours
    [5] in fives
    [10] in tens
    [20] in twenties
    [25] in twenty-fives
    [50] in fifties
    [100] in hundreds
   *[other] in { $step }s
  }

# Numbers that are no multiples: "in tens (13, 23)". It stands in the places called $steps, too.
steps-like = { $steps } ({ $numbers })

# Runs that go over multiples of a number, which is 100: "in ones across 100s". It stands in the places called $steps, too.
steps-across = { $steps } across { $number }s

# On buttons: how far counting goes. $limit is a number such as 200. "on" goes up to it; "back" goes down, with no number above it.
steps-label-on = { $steps } to { $limit }
steps-label-back = back { $steps } within { $limit }
steps-whole-on = count { $steps } to { $limit }
steps-whole-back = count back { $steps } within { $limit }
steps-limit-on = to { $limit }
steps-limit-back = back within { $limit }

# Over the lists that a step is chosen from. $strand is a kind of practice, $grade a grade with its curriculum as published.
steps-practised = What shall be practised?
steps-mixed-in = What shall be mixed in?
steps-same-kind = Only what asks for the same kind of answer can be shuffled together.
steps-which = { $strand }: which step?
steps-page = Page { $page } of { $pages }, easier steps first.
steps-counting-in = Counting: in what?
steps-how-far = Counting { $steps }: how far?

# $sign is the sign that stands on buttons before what is usual.
steps-has-usual = { $sign } has steps usual in { $grade }
steps-usual = { $sign } usual in { $grade }
steps-none-usual = None of these is marked usual in { $grade }.
