pace-buttons-every-day = Every school day
pace-buttons-start-again = Start again now
# { $day } is a short date: Mon 5 Oct.
pace-buttons-until = Until { $day }
pace-buttons-one-week = One week
pace-buttons-two-weeks = Two weeks
pace-buttons-other-day = Until another day
pace-buttons-fewer = Fewer evenings
# { $who } is a number and a nickname: 4. Robin.
pace-buttons-keep = Keep daily: { $who }
pace-buttons-let-go = Not any more: { $who }
