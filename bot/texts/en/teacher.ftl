teacher-welcome = Welcome. You are a teacher here now.
teacher-welcome-next = Make your class now: it takes about three minutes. /newclass does so at any time.

# Questions that a teacher answers by typing. Times are times of day: 17:30.
teacher-ask-title = What is the class called? For example: Kingfisher class
teacher-ask-roster = Send the children’s nicknames, one a line, at most { $most } characters each. Nicknames only: no surnames. Or send the list as an XLSX or CSV file.
teacher-ask-evening = At what time shall the drill go out? From { $from } to { $to }, for example 17:30. A family can choose its own.
teacher-ask-nudge = At what time shall the one gentle nudge go out, if nobody has marked? At least { $gap } minutes after the drill, at { $latest } at the latest.
teacher-ask-digest = At what time shall your digest come? For example 20:00. After the evening time it covers that evening too.

# A class at a glance. $weekdays is "Mon to Fri", $weekday is "Friday", $zone is a time zone: Europe/London.
teacher-children = { $children ->
    [one] { $children } child, { $joined } with a helper
   *[other] { $children } children, { $joined } with a helper
  }
teacher-week = { $weekdays } at { $evening }, nudge at { $nudge } ({ $zone })
teacher-digest = Digest: { $weekday } at { $time }
# $range is "pages 1 to 64" or "page 5"; $pages is how many a day.
teacher-book = Workbook: { $book }, { $range }, { $pages } a day
teacher-no-book = Workbook: none
teacher-no-plan = No week plan yet: nothing goes out.
teacher-no-class = You have no class yet. Make one with /newclass.

teacher-times = { $class }: days and times
teacher-times-days = School days: { $weekdays }
teacher-times-drill = Drill at { $evening }, nudge at { $nudge }
teacher-times-zone = Time zone: { $zone }
teacher-times-tap = Tap what you want to change.

# $typed is what was typed, in quotation marks.
teacher-bad-time = { $typed } is not a time. Send hours and minutes from 00:00 to 23:59, like 17:30.
teacher-bad-zone = I do not know the time zone { $typed }.
teacher-bad-zone-send = Send a city that time zones are named after, like Nairobi, or a zone like Europe/London.
teacher-saved = Saved. A drill time that is over for today starts tomorrow.
teacher-class-made = The class is there.
teacher-class-made-next = Above are its usual days and times; change what does not suit. Next: the children, then the week plan.
