help-first-class = Let us make your first class.
help-first-class-takes = It takes about three minutes: a title, a time zone and the children’s nicknames. You can change everything later.

# What a class needs next.
help-stage-no_children = Next: add the children. Send their nicknames, one a line, or a file.
help-stage-no_plan = Next: choose what is practised. You can start with the usual steps of the grade.
help-stage-nobody_joined = Next: give each family its slip. As soon as somebody has joined, the drills begin by themselves.
# $day is a short date: Mon 14 Sept. $time is a time of day.
help-running = All is running. The next drill goes out on { $day } at { $time }.
# $print is the label of a button.
help-waiting = { $children ->
    [one] { $children } child has nobody to help yet: new slips are under { $print }.
   *[other] { $children } children have nobody to help yet: new slips are under { $print }.
  }
# Always two or more.
help-classes = You have { $classes } classes.
help-which-class = Which one is it about?
help-command-class = /class · plan, children, breaks, digest
help-command-newclass = /newclass · one more class
help-command-undo = /undo · take back a change of the last day

# $children are nicknames: one or several.
help-you-help = You help { $children }.
help-drill-here = { $child }: today’s drill is here, /today shows it.
# $days is "Mon to Fri" or "Mon and Wed".
help-drill-comes = { $child }: the drill comes by itself, { $days } at { $time }.
help-command-today = /today · today’s drill again
help-command-time = /time 18:00 · another time, from the next evening
help-command-show = /show · clip, pictures or words only, for less data; /settings · everything else
help-command-stop = /stop · end it, at once; /mydata and /erase · a copy, or nothing kept
help-not-asked = I did not expect a message just now, so I changed nothing.

# What a question still waits for. $cancel is the label of the button below.
help-still-waiting = I am still waiting for an answer.
help-awaited-new_title = Send the new class’s title, or tap { $cancel }.
help-awaited-new_zone = Send the new class’s time zone, like Europe/London, or tap { $cancel }.
help-awaited-title = Send the class’s new title, or tap { $cancel }.
help-awaited-zone = Send the class’s time zone, like Europe/London, or tap { $cancel }.
help-awaited-roster = Send the children’s nicknames, one a line, or a file, or tap { $cancel }.
help-awaited-evening = Send the time of the drill, like 17:30, or tap { $cancel }.
help-awaited-nudge = Send the time of the nudge, like 19:00, or tap { $cancel }.
help-awaited-digest = Send the time of your digest, like 20:00, or tap { $cancel }.
help-awaited-break = Send the days of the break and its name, or tap { $cancel }.
help-awaited-greeting = Send your greeting: a text, a voice note or a video, or tap { $cancel }.
help-awaited-book_new = Send the workbook: its title, first and last page, and the pages a day, or tap { $cancel }.
help-awaited-book_change = Send the workbook anew: its title, first and last page, and the pages a day, or tap { $cancel }.
help-awaited-book_page = Send the page of the workbook, or “done”, or tap { $cancel }.
help-awaited-nickname = Send the child’s new nickname, or tap { $cancel }.
help-awaited-recording = Tap above what your recording is for, or tap { $cancel }.
help-awaited-file = Tap above which class your list is for, or tap { $cancel }.
help-awaited-file_list = Tap above to add the children of your list, or tap { $cancel }.
help-awaited-pause = Send the day on which the drill shall come again, like 12 October, or tap { $cancel }.
