# Not checked by a native speaker.
-book-questions-shape = Titel, erste und letzte Seite und die Seiten am Tag
book-questions-example = Pebble Path 1-48 2
book-questions-new = Senden Sie das nächste Arbeitsheft: { -book-questions-shape }, so wie hier:
book-questions-new-own = Senden Sie das eigene Arbeitsheft für { $name }: { -book-questions-shape }, so wie hier:
book-questions-change = Senden Sie es neu: { -book-questions-shape }. Bisher gilt:
book-questions-bad-book = { $typed } ließ sich nicht als Arbeitsheft lesen. Senden Sie { -book-questions-shape }, so wie hier:

book-questions-range = Senden Sie eine Seite von { $first } bis { $last } oder „fertig“.
book-questions-page-of-class = Welche Seite von { $book } ist für die Klasse die nächste? { $range }
book-questions-page-of-child = Welche Seite von { $book } ist für { $name } die nächste? { $range }
book-questions-bad-page = { $typed } ist keine Seite von { $book }. { $range }
book-questions-further = Kinder, die schon weiter sind, bleiben, wo sie sind.

book-questions-added = { $book } ist eingereiht: { $pages }, { $aDay } am Tag. Das gilt ab dem nächsten Abend.
book-questions-changed = Gespeichert. Das gilt ab dem nächsten Abend; niemand verliert eine Seite.

book-questions-reached = als Nächstes Seite { $page } von { $book }
book-questions-reached-end = { $book } ist fertig
book-questions-set = { $name }: { $reached }. Das gilt ab dem nächsten Abend.
book-questions-set-class = { $moved ->
    [one] { $moved } Kind: { $reached }. Das gilt ab dem nächsten Abend.
   *[other] { $moved } Kinder: { $reached }. Das gilt ab dem nächsten Abend.
  }
book-questions-set-already = Jedes Kind war schon dort: { $reached }.
book-questions-stay = { $further ->
    [one] { $further } Kind war schon weiter und bleibt dort.
   *[other] { $further } Kinder waren schon weiter und bleiben dort.
  }
