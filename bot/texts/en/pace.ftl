# { $children } are nicknames: Wren and Robin.
pace-pause-title = A pause for { $children }?
pace-pause-how = Nothing comes until the day you choose, to none of the helpers. Then it goes on by itself, and nothing is to be made up.
pace-paused-title = A pause for { $children }
# { $child } is a nickname, { $day } a short date: Mon 5 Oct.
pace-paused-line = { $child }: the drill comes again on { $day }.
pace-running-line = { $child }: no pause.
pace-more = { $count ->
    [one] And one more child.
   *[other] And { $count } more children.
  }
pace-paused-until = Nothing comes until { $day }.
pace-started-again = The drill comes again, from the next evening on.
pace-ask-day = On which day shall the drill come again? Send it like this: 12 October
pace-bad-shape = I could not read { $typed } as a day. Send it like this: 12 October
pace-bad-date = { $typed } is not a date in the calendar. Send it like this: 12 October
pace-bad-slash = { $typed } could be two dates. Please write the month as a word, like 12 October.
# { $day } is a day and a month with its year, { $weekday } the day of the week that it is.
pace-bad-weekday = { $day } is a { $weekday }. Please send the day again.
pace-bad-past = { $day } is over already. Send a day from { $first } to { $last }.
pace-bad-far = { $day } is too far ahead: a pause is { $most } days at most. Send a day from { $first } to { $last }.
pace-days-title = On which days shall the drill come?
# { $days } are weekdays: Mon to Fri.
pace-days-line = { $child }: { $days }
pace-days-three = { $child }: three evenings a week now, as nobody answered for a while
pace-days-one = { $child }: one evening a week now, as nobody answered for a while
pace-days-paused = { $child }: a pause until { $day }
pace-days-how = Tap a day to take it in or out. From the next evening on, for every helper of the child.
pace-days-last = One day has to stay. For a rest there is /pause.
pace-every-day = Every school day, from the next evening on.
pace-fewer-three = We send the drill on three evenings a week now. Tap to have it every school day.
pace-fewer-one = We send the drill on one evening a week now. Tap to have it every school day.
pace-today-paused = { $child }: a pause until { $day }. /pause ends it.

# In the table of everything that is kept. { $day } is a date like 2026-10-05, { $days } are weekdays.
pace-held = how often the drill comes
pace-held-daily = every school day
pace-held-three = three evenings a week
pace-held-one = one evening a week
pace-held-announced = fewer evenings from { $day }
pace-held-kept = kept by the teacher
pace-held-paused = paused until { $day }
pace-held-days = only on { $days }
