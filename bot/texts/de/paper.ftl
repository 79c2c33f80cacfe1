# Not checked by a native speaker.

paper-child = Kind { $number }
paper-page = Seite { $page } von { $of }
paper-answers = Lösungen
paper-name = Name
paper-of = von { $cards }
paper-pages-done = Seiten im Arbeitsheft
paper-from-page = ab Seite { $page }
paper-adult = Erwachsene
paper-how-to-mark = Das Kind sagt jede Antwort laut. Schreiben Sie auf, wie viele richtig waren. Das zeigt nur einen Abend.

paper-what-it-is = Ein paar Minuten Kopfrechnen an jedem Schultag. Die Karten kommen auf Ihr Handy; Sie tippen an, was Ihr Kind noch nicht wusste.
paper-scan = Scannen Sie das Quadrat mit der Handykamera und tippen Sie auf Start.
paper-or-send = Oder öffnen Sie { $place }, tippen Sie auf Start und senden Sie diesen Code:
paper-until = Gültig bis
paper-this-family = Nur für die Familie dieses Kindes.
