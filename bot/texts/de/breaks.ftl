# Not checked by a native speaker.
breaks-how = Senden Sie die Tage und einen Namen. Zum Beispiel: 12. Okt. bis 16. Okt. Herbstferien
breaks-one-day = Ein Tag reicht auch: 4. Sept. Sporttag
breaks-untitled = Freie Tage

breaks-list = { $class }: freie Tage
breaks-list-page = { $class }: freie Tage, Seite { $page } von { $pages }
breaks-line = { $title }: { $days }
breaks-none = Keine in Sicht. An freien Tagen wird nichts gesendet.
breaks-tap-to-remove = Tippen Sie auf freie Tage, um sie zu entfernen.
breaks-button = ✗ { $title }, { $day }

breaks-added = { $title }: { $days } { $year }
breaks-no-school-day = Kein Schultag dieser Klasse ist dabei, es ändert sich also nichts.
breaks-one-school-day = Ein Schultag, ein { $weekday }. An ihm wird nichts gesendet.
breaks-school-days = { $days } Schultage, { $weekdays }. An ihnen wird nichts gesendet.
breaks-over = Das ist schon vorbei: Nur der Wochenbericht und die Berichte zählen es.
breaks-today-stays = Eine Übung, die heute schon kam, bleibt.
breaks-there-already = Das war schon eingetragen; es kam nichts dazu.
breaks-removed = { $title } entfernt.

breaks-bad-shape = Ich konnte { $typed } nicht als freie Tage lesen.
breaks-bad-date = { $typed } ist kein Datum im Kalender.
breaks-bad-slash = { $typed } könnten zwei Daten sein. Bitte schreiben Sie den Monat als Wort, wie 3. April.
breaks-bad-order = { $typed }: Der letzte Tag liegt vor dem ersten.
breaks-bad-long = { $days } freie Tage am Stück sind zu viel, höchstens { $most }.
breaks-bad-weekday = Der { $date } { $year } ist ein { $weekday }. Bitte senden Sie es noch einmal mit dem richtigen Tag.
breaks-date = { $day }. { $month }
breaks-date-year = { $day }. { $month } { $year }

breaks-holidays = { $class }: Feiertage
breaks-holidays-of = { $place }, die nächsten zwölf Monate, nur Schultage.
breaks-holidays-none = Keine, die nicht schon bei Ihren freien Tagen stehen.
breaks-holidays-ticked = { $chosen } von { $of } angehakt. Tippen Sie auf einen, um ihn wegzulassen oder wieder dazuzunehmen.
breaks-holidays-compare = Bitte vergleichen Sie mit dem Kalender Ihrer Schule: Tage können kurzfristig per Gesetz verlegt werden.
breaks-holidays-page = Seite { $page } von { $pages }
breaks-holidays-add = { $chosen ->
    [one] Diesen hinzufügen
   *[other] Diese { $chosen } hinzufügen
  }
breaks-holidays-there = Sie waren schon eingetragen; es kam nichts dazu.
breaks-holidays-added = { $added ->
    [one] { $added } Feiertag hinzugefügt.
   *[other] { $added } Feiertage hinzugefügt.
  }
breaks-whose-holidays = Die Feiertage welches Landes?
breaks-which-region = { $country }: Welche Region?
breaks-choose-country = Wählen Sie das Land der Schule.
breaks-some-in-region = Manche Feiertage gelten nur in einer Region.
breaks-places-page = Seite { $page } von { $pages }, nach dem Alphabet.
