# To another helper of a child that is being erased.
rights-erasing-for-helper = Everything kept about { $child } is being erased.
rights-another-asked = Another of the child’s helpers asked for it. No more drills come.
rights-until-then = For a day it can be taken back by whoever asked. Until then /mydata sends you a copy.
rights-kept-for-helper = { $child } is not erased after all.
rights-took-it-back = Whoever asked for it took it back. The drills come as before.

# To a teacher: the child by its number on the class's list alone, and without reasons.
rights-erasing-for-teacher = No. { $number } of { $class } is being erased, as the family wishes.
rights-off-the-list = The child is off the list now. In a day everything kept about it is gone; you need to do nothing.
rights-kept-for-teacher = No. { $number } of { $class } is back on the list.
rights-family-took-back = The family took its wish back. Nothing was lost.

# Beside two files: a table (CSV) and the same for programs (JSON).
rights-data-of = Everything kept about { $child }
rights-two-files = The table opens in a spreadsheet; the other file is the same for programs (JSON).
rights-chat-is-yours = Messages in this chat are yours; deleting them is up to you.

rights-which-child = Erase what is kept about a child
rights-whose = Whose? You help { $children }.
rights-ask = Erase everything about { $child }?
rights-ask-at-once = At once: no more drills, to any helper. The child is off the class’s list.
rights-ask-after-a-day = After a day: nickname, marks, pages, agreements and your account here are deleted for good.
rights-ask-others = Other helpers and the teacher are told, without reasons. Paper and chat messages are not deleted.
rights-ask-copy = Want a copy first? Send /mydata.

rights-erasing = { $child } is being erased.
rights-gone-in-a-day = Nothing is sent any more. In a day everything is gone.
# $undo is the label of the button below.
rights-undo = Until then { $undo } brings all of it back, and /mydata sends a copy.
rights-erasing-already = { $child } is being erased already.
rights-only-they = Another helper asked for it. Only they can take it back, for a day.
rights-copy-until-then = /mydata sends you a copy until then.
rights-stays = { $child } stays.
rights-nothing-lost = Nothing was lost. The drills come as before.
rights-not-erased = Nothing was changed.
rights-nothing-held = Nothing about a child is kept for you here. If you help a child, open your join link first.

# For whoever runs the bot. $child is an id.
rights-operator-erased = Erased the child { $child } and every helper without another child.
rights-operator-no-child = There is no child { $child }. Nothing was changed.
