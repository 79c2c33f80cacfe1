# Not checked by a native speaker.
digest-page-grid-note = Zahlen: Anteil richtig, in %
digest-page-answer = { $headline }.
digest-page-evenings = { $ended }.
digest-page-sent = Die Woche auf einer Seite. Darauf stehen Namen von Kindern: bitte nur für sich selbst drucken.
