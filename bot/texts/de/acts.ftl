# Not checked by a native speaker.
acts-some-child = ein Kind
acts-greeting-replaced = Gruß ersetzt
acts-greeting-removed = Gruß entfernt
acts-children-added = { $count ->
    [one] { $count } Kind hinzugefügt
   *[other] { $count } Kinder hinzugefügt
  }
acts-child-archived = { $child } archiviert
acts-child-moved = { $child } in andere Klasse
acts-proposal = Schritte im Wochenplan
acts-plan-used = Wochenplan übernommen
acts-book-changed = { $book } geändert
acts-book-put-away = { $book } weggelegt
acts-draft = Änderungen am Wochenplan verworfen
acts-term-ended = Abschnitt beendet
acts-term-made = Abschnitt angelegt
acts-breaks-added = { $count ->
    [one] { $count }-mal freie Tage eingetragen
   *[other] { $count }-mal freie Tage eingetragen
  }
acts-break-removed = freie Tage { $title } entfernt
acts-class-archived = Klasse archiviert
acts-teacher-removed = Lehrkraft entfernt
acts-term-week = Woche { $week } aus dem Abschnitt genommen
acts-pages = { $count ->
    [one] Seite von { $count } Kind in { $book }
   *[other] Seite von { $count } Kindern in { $book }
  }
acts-page = { $child }, Seite in { $book }

acts-none = Es gibt nichts zurückzunehmen. Was Sie ändern, lässt sich einen Tag lang zurücknehmen.
acts-title = Was sich zurücknehmen lässt
acts-tap = Tippen Sie an, was wieder so sein soll wie vorher. Das geht jeweils einen Tag lang.
acts-on-page = Seite { $page } von { $pages }
acts-again = Das wurde schon zurückgenommen.
acts-taken-back = Zurückgenommen: { $act }.
acts-for-teachers = /undo ist für Lehrkräfte. Um eine Markierung zu ändern, tippen Sie unter dem Ergebnis auf „{ $fix }“; /today zeigt die Übung von heute.
