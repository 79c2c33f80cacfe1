# Not checked by a native speaker.
pace-pause-title = Eine Pause für { $children }?
pace-pause-how = Bis zum gewählten Tag kommt nichts, bei keiner Begleitperson. Dann geht es von selbst weiter, und nichts ist nachzuholen.
pace-paused-title = Eine Pause für { $children }
pace-paused-line = { $child }: Die Übung kommt wieder am { $day }.
pace-running-line = { $child }: keine Pause.
pace-more = { $count ->
    [one] Und noch ein Kind.
   *[other] Und noch { $count } Kinder.
  }
pace-paused-until = Bis { $day } kommt nichts.
pace-started-again = Die Übung kommt wieder, ab dem nächsten Abend.
pace-ask-day = An welchem Tag soll die Übung wieder kommen? Senden Sie ihn so: 12. Oktober
pace-bad-shape = Ich konnte { $typed } nicht als Tag lesen. Senden Sie ihn so: 12. Oktober
pace-bad-date = { $typed } steht nicht im Kalender. Senden Sie den Tag so: 12. Oktober
pace-bad-slash = { $typed } könnten zwei Tage sein. Bitte schreiben Sie den Monat als Wort, wie 12. Oktober.
pace-bad-weekday = Der { $day } ist ein { $weekday }. Bitte senden Sie den Tag noch einmal.
pace-bad-past = Der { $day } ist schon vorbei. Senden Sie einen Tag von { $first } bis { $last }.
pace-bad-far = Der { $day } ist zu weit weg: Eine Pause dauert höchstens { $most } Tage. Senden Sie einen Tag von { $first } bis { $last }.
pace-days-title = An welchen Tagen soll die Übung kommen?
pace-days-line = { $child }: { $days }
pace-days-three = { $child }: jetzt an drei Abenden in der Woche, weil eine Weile niemand geantwortet hat
pace-days-one = { $child }: jetzt an einem Abend in der Woche, weil eine Weile niemand geantwortet hat
pace-days-paused = { $child }: eine Pause bis { $day }
pace-days-how = Tippen Sie auf einen Tag, um ihn dazuzunehmen oder herauszunehmen. Ab dem nächsten Abend, für alle Begleitpersonen des Kindes.
pace-days-last = Ein Tag muss bleiben. Zum Ausruhen gibt es /pause.
pace-every-day = Jeden Schultag, ab dem nächsten Abend.
pace-fewer-three = Wir senden die Übung jetzt an drei Abenden in der Woche. Tippen Sie, und sie kommt jeden Schultag.
pace-fewer-one = Wir senden die Übung jetzt an einem Abend in der Woche. Tippen Sie, und sie kommt jeden Schultag.
pace-today-paused = { $child }: eine Pause bis { $day }. /pause beendet sie.
pace-held = wie oft die Übung kommt
pace-held-daily = jeden Schultag
pace-held-three = drei Abende in der Woche
pace-held-one = ein Abend in der Woche
pace-held-announced = weniger Abende ab { $day }
pace-held-kept = von der Lehrkraft so gelassen
pace-held-paused = Pause bis { $day }
pace-held-days = nur { $days }
