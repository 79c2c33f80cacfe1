set-up-zone = Which time zone are the families in? Tap the clock that is right, or send a city such as Nairobi or Europe/London.
set-up-zones = There are several. Which one?
set-up-first-plan = { $class }: the first plan
# $curriculum is its title as published.
set-up-grade = { $curriculum }. Which grade?
set-up-curriculum = Which curriculum is nearest to yours?
set-up-suggest = I suggest five steps usual at this time of the school year. You look them over before anything goes out.
set-up-no-steps = No steps are named for that grade. Open the week plan and choose the parts yourself.
# After Cancel.
set-up-cancelled = Left as it was.
set-up-nothing-asked = Nothing is waiting for an answer any more.
set-up-gone-on = That class is made, or was given up. Send /class to see where you are.
