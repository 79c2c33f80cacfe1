# Not checked by a native speaker.
digest-table-number = Nummer
digest-table-nickname = Spitzname
digest-table-days-practised = Tage geübt
digest-table-right = { $strand } richtig
digest-table-asked = { $strand } gefragt
digest-table-pages = Seiten
digest-table-over-weeks = { $strand } über vier Wochen

digest-table-practised = geübt
digest-table-not_today = heute nicht
digest-table-silent = keine Antwort
digest-table-unsent = nicht zugestellt

digest-table-rising = steigend
digest-table-steady = gleichbleibend
digest-table-falling = sinkend
digest-table-too_little = zu wenig, um etwas zu sagen
digest-table-growth = { $evenings ->
    [one] { $trend } ({ $evenings } Abend)
   *[other] { $trend } ({ $evenings } Abende)
  }
