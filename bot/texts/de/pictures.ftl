# Not checked by a native speaker.

pictures-start = Start
pictures-to-say = zu sagen

pictures-start-at = Fang bei { $number } an.
pictures-count-on = Zähle { $steps } weiter.
pictures-count-back = Zähle { $steps } zurück.

pictures-score = { $right } von { $asked }
pictures-position = { $card } von { $of }
pictures-seconds =
  { $count ->
    [one] je { $count } Sekunde
   *[other] je { $count } Sekunden
  }
pictures-say-each = Sag jede Antwort laut.
pictures-finished = Das war die letzte Karte.
pictures-mark-together = Jetzt gemeinsam markieren.
pictures-say-again = Noch einmal beim Frühstück

pictures-practised = geübt
pictures-not-today = heute nicht
pictures-silent = keine Antwort
pictures-unsent = nicht zugestellt
pictures-not-asked = nicht gefragt

pictures-secure = sicher
pictures-growing = im Aufbau
pictures-not-yet = noch nicht
pictures-too-few = zu wenig Daten

pictures-no-evening = In diesem Abschnitt noch kein Abend
pictures-evenings =
  { $count ->
    [one] { $count } Abend in diesem Abschnitt
   *[other] { $count } Abende in diesem Abschnitt
  }
pictures-percent = { $hundredths } %
