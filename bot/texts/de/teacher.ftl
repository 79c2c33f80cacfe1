# Not checked by a native speaker.
teacher-welcome = Willkommen. Sie sind jetzt Lehrkraft hier.
teacher-welcome-next = Legen Sie gleich Ihre Klasse an: Das dauert etwa drei Minuten. Mit /newclass geht es jederzeit.

teacher-ask-title = Wie heißt die Klasse? Zum Beispiel: Eisvogelklasse
teacher-ask-roster = Senden Sie die Spitznamen der Kinder, einen pro Zeile, je höchstens { $most } Zeichen. Nur Spitznamen, keine Nachnamen. Oder senden Sie die Liste als XLSX- oder CSV-Datei.
teacher-ask-evening = Um wie viel Uhr soll die Übung kommen? Von { $from } bis { $to }, zum Beispiel 17:30. Jede Familie kann eine eigene Zeit wählen.
teacher-ask-nudge = Um wie viel Uhr soll die eine freundliche Erinnerung kommen, wenn noch niemand markiert hat? Mindestens { $gap } Minuten nach der Übung, spätestens um { $latest } Uhr.
teacher-ask-digest = Um wie viel Uhr soll Ihr Wochenbericht kommen? Zum Beispiel 20:00. Kommt er nach der Übung, zählt dieser Abend schon mit.

teacher-children = { $children ->
    [one] { $children } Kind, { $joined } mit Begleitperson
   *[other] { $children } Kinder, { $joined } mit Begleitperson
  }
teacher-week = { $weekdays } um { $evening } Uhr, Erinnerung um { $nudge } Uhr ({ $zone })
teacher-digest = Wochenbericht: { $weekday } um { $time } Uhr
teacher-book = Arbeitsheft: { $book }, { $range }, { $pages } am Tag
teacher-no-book = Arbeitsheft: keines
teacher-no-plan = Noch kein Wochenplan: Es wird nichts verschickt.
teacher-no-class = Sie haben noch keine Klasse. Legen Sie mit /newclass eine an.

teacher-times = { $class }: Tage und Zeiten
teacher-times-days = Schultage: { $weekdays }
teacher-times-drill = Übung um { $evening } Uhr, Erinnerung um { $nudge } Uhr
teacher-times-zone = Zeitzone: { $zone }
teacher-times-tap = Tippen Sie an, was Sie ändern möchten.

teacher-bad-time = { $typed } ist keine Uhrzeit. Senden Sie Stunden und Minuten von 00:00 bis 23:59, zum Beispiel 17:30.
teacher-bad-zone = Die Zeitzone { $typed } kenne ich nicht.
teacher-bad-zone-send = Senden Sie eine Stadt, nach der eine Zeitzone heißt, etwa Nairobi, oder eine Zone wie Europe/London.
teacher-saved = Gespeichert. Eine Übungszeit, die heute schon vorbei ist, gilt ab morgen.
teacher-class-made = Die Klasse ist angelegt.
teacher-class-made-next = Oben stehen übliche Tage und Zeiten; ändern Sie, was nicht passt. Als Nächstes: die Kinder, dann der Wochenplan.
