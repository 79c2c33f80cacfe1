# Who teaches a class. The lead teacher made the class or was handed it; co-teachers were invited.
teachers-title = { $class }: teachers
teachers-alone = You alone.
teachers-you-lead = You and { $others } more. You are the lead teacher.
teachers-you-co = You and { $others } more. You are a co-teacher.
# $day is a short date.
teachers-open-lead = A link to hand the class over is open until { $day }.
teachers-open-co = A link for a co-teacher is open until { $day }.
teachers-lead-can = Each teacher sees and does everything. Inviting, removing and archiving are for the lead.
teachers-co-can = You see and do everything here. Inviting, removing and archiving are for the lead.
teachers-no-names = No names are kept: co-teachers are told apart by the day they came.

teachers-link-lead = To hand over { $class }
teachers-link-co = For a co-teacher of { $class }
teachers-link-once = For one person, once, within { $days } days. I show it only now.
teachers-link-note-lead = Whoever opens it becomes the lead teacher. You stay as a co-teacher until you leave.
teachers-link-note-co = Whoever opens it sees the children’s nicknames and results: pass it on with care.
teachers-link-made = A link was made since this was shown; it is further down. If none came, tap once more.

# A button that takes a co-teacher out. $number counts from 1, $day is a short date.
teachers-remove = ✗ Co-teacher { $number }, since { $day }
teachers-removed = Removed. They see nothing of this class any more.
teachers-leave = Leave { $class }?
teachers-leave-note = You no longer see it and get no digest. The class goes on. To come back you need a new link from its lead teacher.
teachers-left = You have left the class.

teachers-archived = { $class } is archived.
teachers-archived-now = Nothing is sent any more, tonight’s drills included. In an hour each family is told once that practice stops.
# $undo is the label of a button.
teachers-archived-undo = { $undo } brings everything back, for a day. Before the hour is over nobody hears of it. After { $days } days the children’s data is deleted.

teachers-joined-lead = You teach { $class } now, as its lead teacher.
teachers-joined-co = You teach { $class } now, as a co-teacher.
teachers-joined-note-lead = If somebody handed it to you, they stay as a co-teacher until they leave.
teachers-joined-note-co = You can do everything here but invite, remove and archive. The digest comes to you too.

teachers-classes = Your classes
teachers-classes-none = None at the moment. Make one, or open a colleague’s link.
# Always several classes.
teachers-classes-page = { $classes } classes. Page { $page } of { $pages }.
teachers-by-invitation = Here a teacher needs an invitation. Ask the person who runs this bot for one, or a colleague for a link to their class.
