# Not checked by a native speaker.

stop-today-stop = Stop vir vandag
stop-today-go-on = Tog aangaan
stop-today-fine = Vir vandag gestop. Dit is reg so.
stop-today-done = Gedoen, en dit tel: { $parts }.
stop-today-until = Vandag kom daar niks meer nie. Aangaan kan nog tot middernag.
