settings-title = Your settings
# $days are weekdays: Mon to Fri; $practised is a whole sentence of its own: how many evenings were practised.
settings-child = { $name }: { $days } at { $time }. { $practised }
# $pace says why the drill comes less often: paused until Mon 5 Oct.
settings-child-pace = { $name }: { $pace }. { $practised }
settings-more-children = { $count ->
    [one] And one more child.
   *[other] And { $count } more children.
  }
# $amount is an estimate with its unit: 1.2 MB.
settings-data = Sent to you this month: about { $amount }. Your phone may have loaded more or less.
settings-scope = The switches count for this phone alone; the time counts for the family.
settings-commands = More: /language, /share, /mydata, /erase, /stop
settings-kilobytes = { $amount } kB
settings-megabytes = { $amount } MB
settings-time = Drill at { $time }
settings-way = How cards are shown
settings-days = Which days
settings-pause = Pause
settings-back = To the settings
settings-switch-bigger = Bigger type
settings-switch-noTiming = No seconds
settings-switch-quiet = Without a sound
settings-switch-clockAid = Clock explained
settings-switch-monthly = Monthly picture
settings-on-bigger = Bigger type, from the next screen.
settings-on-noTiming = No clip and no seconds, from the next screen.
settings-on-quiet = What comes by itself makes no sound from now on.
settings-on-clockAid = Answers to clocks are explained with a drawing.
settings-on-monthly = With a month’s last evening you get a picture of your child’s own evenings.
settings-off-bigger = Usual type again, from the next screen.
settings-off-noTiming = Cards come at the class’s pace again.
settings-off-quiet = Messages come as your phone is set.
settings-off-clockAid = Clocks without the drawing again.
settings-off-monthly = No monthly picture.
settings-sibling-ask = From which age on may a brother or sister help?
settings-sibling-now = Now from { $age }. It is your school’s choice and is said to whoever joins; nobody who has joined is turned out.
settings-sibling = Age of helping siblings
