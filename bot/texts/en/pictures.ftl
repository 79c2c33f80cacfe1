# Words on pictures and clips. There is little room: keep them as short as these.
# Under a square of numbers: where counting starts, and the numbers to say (for the adult).
pictures-start = start
pictures-to-say = to say

# Told to the child. $steps is "in tens", from steps.ftl.
pictures-start-at = Start at { $number }.
pictures-count-on = Count on { $steps }.
pictures-count-back = Count back { $steps }.

pictures-score = { $right } of { $asked }
# The place of a card among the cards of its part.
pictures-position = { $card } of { $of }
# Before the first card: the seconds that each one stays.
pictures-seconds =
  { $count ->
    [one] { $count } second each
   *[other] { $count } seconds each
  }
pictures-say-each = Say each answer aloud.
pictures-finished = That was the last card.
pictures-mark-together = Now mark it together.
pictures-say-again = Say again at breakfast

# How a child's evening went, in a teacher's picture.
pictures-practised = practised
pictures-not-today = not today
pictures-silent = no answer
pictures-unsent = not delivered
pictures-not-asked = not asked yet

# How sure one can be that a child knows a kind of practice.
pictures-secure = secure
pictures-growing = growing
pictures-not-yet = not yet
pictures-too-few = too few to tell

pictures-no-evening = No evening yet this term
pictures-evenings =
  { $count ->
    [one] { $count } evening this term
   *[other] { $count } evenings this term
  }
pictures-percent = { $hundredths }%
