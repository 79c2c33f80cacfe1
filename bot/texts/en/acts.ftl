# What a teacher did, in few words: on a button, and after "Taken back:". $child is a nickname, or acts-some-child.
acts-some-child = a child
acts-greeting-replaced = greeting replaced
acts-greeting-removed = greeting removed
acts-children-added = { $count ->
    [one] { $count } child added
   *[other] { $count } children added
  }
acts-child-archived = { $child } archived
acts-child-moved = { $child } moved
acts-proposal = steps of the week plan
acts-plan-used = week plan put in use
acts-book-changed = { $book } changed
acts-book-put-away = { $book } put away
acts-draft = changes to the week plan dropped
acts-term-ended = term ended
acts-term-made = term made
acts-breaks-added = { $count ->
    [one] { $count } break added
   *[other] { $count } breaks added
  }
# $title is the break's name: Half term.
acts-break-removed = break { $title } removed
acts-class-archived = class archived
acts-teacher-removed = co-teacher removed
# $week is its number: week 4.
acts-term-week = week { $week } of the term taken out
acts-pages = { $count ->
    [one] page of { $count } child in { $book }
   *[other] page of { $count } children in { $book }
  }
acts-page = { $child }’s page in { $book }

acts-none = There is nothing to take back. What you change can be taken back for a day.
acts-title = What can be taken back
acts-tap = Tap what shall be as it was. Each can be taken back for a day after it was done.
acts-on-page = Page { $page } of { $pages }
acts-again = That was taken back already.
# $act is one of the above.
acts-taken-back = Taken back: { $act }.
# $fix is the label of a button: Change a mark.
acts-for-teachers = /undo is for teachers. To change a mark, tap { $fix } under the result; /today shows today’s drill.
