# Not checked by a native speaker.
settings-title = Ihre Einstellungen
settings-child = { $name }: { $days } um { $time } Uhr. { $practised }
settings-child-pace = { $name }: { $pace }. { $practised }
settings-more-children = { $count ->
    [one] Und noch ein Kind.
   *[other] Und noch { $count } Kinder.
  }
settings-data = In diesem Monat an Sie gesendet: etwa { $amount }. Ihr Telefon kann mehr oder weniger geladen haben.
settings-scope = Die Schalter gelten nur für dieses Telefon, die Zeit gilt für die Familie.
settings-commands = Mehr: /language, /share, /mydata, /erase, /stop
settings-kilobytes = { $amount } kB
settings-megabytes = { $amount } MB
settings-time = Übung um { $time }
settings-way = Wie Karten gezeigt werden
settings-days = Welche Tage
settings-pause = Pause
settings-back = Zu den Einstellungen
settings-switch-bigger = Größere Schrift
settings-switch-noTiming = Keine Sekunden
settings-switch-quiet = Ohne Ton
settings-switch-clockAid = Uhr erklärt
settings-switch-monthly = Monatsbild
settings-on-bigger = Größere Schrift ab der nächsten Anzeige.
settings-on-noTiming = Kein Video und keine Sekunden ab der nächsten Anzeige.
settings-on-quiet = Was von selbst kommt, kommt ab jetzt ohne Ton.
settings-on-clockAid = Antworten zu Uhren werden mit einer Zeichnung erklärt.
settings-on-monthly = Mit dem letzten Abend im Monat kommt ein Bild der eigenen Abende Ihres Kindes.
settings-off-bigger = Wieder die übliche Schrift ab der nächsten Anzeige.
settings-off-noTiming = Die Karten kommen wieder im Tempo der Klasse.
settings-off-quiet = Nachrichten kommen so, wie Ihr Telefon eingestellt ist.
settings-off-clockAid = Uhren wieder ohne Zeichnung.
settings-off-monthly = Kein Monatsbild.
settings-sibling-ask = Ab welchem Alter dürfen Geschwister helfen?
settings-sibling-now = Jetzt ab { $age }. Das wählt Ihre Schule; wer neu dazukommt, liest es, und niemand, der schon hilft, wird ausgeschlossen.
settings-sibling = Alter helfender Geschwister
