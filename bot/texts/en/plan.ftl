# How much a part asks; numbers are those of a counting run.
plan-cards =
  { $count ->
    [one] { $count } card
   *[other] { $count } cards
  }
plan-numbers =
  { $count ->
    [one] { $count } number
   *[other] { $count } numbers
  }

# $amount is cards or numbers: "10 cards, 3 s each".
plan-size = { $amount }, { $seconds } s each
plan-line = { $part }: { $size }

# A mixed part on a button: its first step, and how many others.
plan-and-more = { $step } and { $count } more

# One part of a plan.
plan-usual-size = Usual size: { $size }.
plan-shuffled = Their cards come shuffled, about as many of each.
plan-step-usual = { $step }, usual in { $grade }
plan-step-not-usual = { $step }, not marked usual in { $grade }

# What a curriculum says of a step. $statement is in English, in our words; $source is the document and its number.
plan-statement = { $grade }: { $statement }.
plan-source = In our words; { $source }.
# How sure we are, at the end of $source.
plan-doubt-secondary = read in a summary only
plan-doubt-memory = from memory, please check
plan-not-usual = Not marked usual in { $grade }.
# $others is a list of other grades.
plan-usual-elsewhere = Not marked usual in { $grade }, but in { $others }.
plan-no-source = No published source: common practice.
# A list of English sentences follows.
plan-asked-for = Asked for, in our words:
plan-other-places =
  { $count ->
    [one] and { $count } other place
   *[other] and { $count } other places
  }

plan-already-there = Part { $part } practises that already. Choose something else.
plan-no-room-apart = Apart that makes { $parts } parts, and { $max } are the most. Remove another part first.
plan-none-last = No plan was in use last week.
plan-none-digest = The digest proposes no change of this plan yet.
plan-none-term = The term has no plan for the next evening.
plan-none-same = That is the plan in use already.
plan-put-in-use = In use from the next evening. Drills already sent stay as they are.

# Why a plan cannot be used. $part counts from 1.
plan-problem-empty = The plan needs at least one part. Add one first.
plan-problem-parts = { $value } parts are too many: at most { $max }. Remove one.
plan-problem-cards = Part { $part }: { $value } cards; from { $min } to { $max } fit.
plan-problem-seconds = Part { $part }: { $value } seconds; from { $min } to { $max } fit.
plan-problem-twice = Part { $part } practises the same as another part. Choose something else.
plan-problem-mixed = Part { $part } mixes { $value } steps; at most { $max } fit. Take one out.
plan-problem-unlike = Part { $part }: these steps ask for different things and cannot be shuffled. Keep them apart.
plan-problem-unknown = Part { $part } practises something this version does not know. Choose again.
