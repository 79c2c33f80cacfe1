# Not checked by a native speaker.

stop-today-stop = Für heute aufhören
stop-today-go-on = Doch weitermachen
stop-today-fine = Für heute aufgehört. Das ist in Ordnung.
stop-today-done = Geschafft, und es zählt: { $parts }.
stop-today-until = Heute kommt nichts mehr. Bis Mitternacht kann es noch weitergehen.
