stop-today-stop = Stop for today
stop-today-go-on = Go on after all
stop-today-fine = Stopped for today. That is fine.
# $parts is a list of what was practised: number bonds and doubles.
stop-today-done = Done, and it counts: { $parts }.
stop-today-until = Nothing more comes today. You can still go on until midnight.
