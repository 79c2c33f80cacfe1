# Words on printed paper. Counting tasks are worded in pictures.ftl.
# A child whose nickname cannot be printed; $number is its place on the class list.
paper-child = child { $number }
paper-page = page { $page } of { $of }
paper-answers = Answers
# Before a line to write the child's name on.
paper-name = Name
# After an empty box for the score.
paper-of = of { $cards }
paper-pages-done = Workbook pages done
paper-from-page = from page { $page }
# Before a line for the initials of whoever helped.
paper-adult = Adult
paper-how-to-mark = The child says each answer aloud. Write how many were right. A score is a snapshot of one evening.

# On a join slip. Start is the button of the chat app and stays as it is; $place is where the chat is found.
paper-what-it-is = A few minutes of mental maths each school day. The cards come to your phone; you tap what was missed.
paper-scan = Scan the square with your phone’s camera and tap Start.
paper-or-send = Or open { $place }, tap Start and send this code:
# A date follows, on the same line.
paper-until = Good until
paper-this-family = Give this slip only to this child’s family.
