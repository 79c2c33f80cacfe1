# A class's list of children. $class is the class's title, $names are nicknames: "Wren, Otter and 3 more".
children-none = { $class }: no children yet
children-joined = { $class }: { $joined } of { $all } joined
children-waiting = Not yet: { $names }
children-left = Helper has left: { $names }
children-unreached = Messages no longer arrive: { $names }
# $sign stands before a child on its button: ✓.
children-legend = { $sign } has a helper. Tap a child to rename or move it, or for a new link.
# The end of a list of names, in place of those that are left out: Wren, Otter and 3 more.
children-more = { $more } more

# One child. Times are times of day: 17:30.
children-helper-left = Its helper has left.
children-not-joined = Not joined yet.
children-helpers = { $helpers ->
    [one] { $helpers } helper
   *[other] { $helpers } helpers
  }
children-helpers-unreached = { $helpers ->
    [one] { $helpers } helper: messages no longer arrive
   *[other] { $helpers } helpers: messages no longer arrive
  }
# Always two helpers or more. $reachable is how many of them get messages.
children-helpers-some = { $helpers } helpers, { $reachable } of them within reach
children-drill = Drill at { $time }
children-drill-own = Drill at { $time }, the family’s own time

children-link-title = A new link for { $child }?
children-link-note = The link or slip given out before stops working. Helpers who have joined stay.

children-nickname = What shall { $child } be called? At most { $most } characters, no surname.
children-nickname-empty = I see no nickname in that.
# $typed is what was typed, in quotation marks.
children-nickname-long = { $typed } has { $length } characters, at most { $most }.
children-nickname-again = Send a nickname of 1 to { $most } characters.
children-renamed = { $before } is called { $now } now, in everything from here on.

children-move-no-class = You have no other class. Make one with /newclass, then move the child there.
children-move-title = Which class does { $child } move to?
children-move-note = Helpers, marks and slips go along. A drill that was sent today stays; from the next evening on it is the other class’s plan, time and workbook. Each helper is told once.
# $number is the child's place on the class's list.
children-moved = { $child } is in { $class } now, with the number { $number }.
children-moved-told = Each helper is told.
children-moved-no-plan = That class has no week plan yet: nothing goes out there.

children-archived = { $child } is archived.
# $button is the label of a button: Archived children.
children-archived-note = No drill goes out any more and the join slips are dead. Marks and number are kept: { $button } brings { $child } back within { $days } days. Then all of it is deleted.
children-archive-list = { $count ->
    [one] { $class }: { $count } archived child
   *[other] { $class }: { $count } archived children
  }
children-archive-tap = Tap one to bring it back, with its number, helpers and marks. Its drills start with the next evening.
children-back = { $child } is on the list again.
