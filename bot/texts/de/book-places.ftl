# Not checked by a native speaker.
book-places-title = { $title }: wer ist wo
book-places-no-book = { $who }: kein Arbeitsheft
book-places-all-done = { $who }: alles fertig
book-places-line = { $who }: { $book }, Seite { $page } von { $last }, { $finish }
book-places-too_early = für ein Datum zu früh
book-places-standing = zuletzt keine Seiten
book-places-no-children = Noch keine Kinder.
book-places-dates = Das Datum sagt, wann es fertig ist, im eigenen Tempo des Kindes.
book-places-dates-paged = Seite { $page } von { $pages }. { book-places-dates }

book-places-child-title = { $name }: Arbeitshefte
book-places-next-page = { $book }: Als Nächstes kommt Seite { $page } von { $last }.
book-places-child-no-book = Keines. Abends wird nach keinen Seiten gefragt.
book-places-child-all-done = Alle sind fertig.
book-places-pace = { $pages ->
    [one] { $pages } Seite pro Abend in den letzten { $weeks } Wochen.
   *[other] { $pages } Seiten pro Abend in den letzten { $weeks } Wochen.
  }
book-places-then = Danach { $book }, ab Seite { $page }.
book-places-counted = Gezählt werden die Seiten, die die Begleitpersonen angetippt haben; wo niemand tippte, keine.

book-places-child-too-early = Für ein Datum zu früh: Es braucht { $evenings } Abende mit einer Antwort zu den Seiten.
book-places-child-standing = Zuletzt keine Seiten, darum gibt es kein Datum.
book-places-finish = Fertig { $when }.
book-places-finish-range = Fertig { $when }; in 8 von 10 Fällen frühestens { $from }, spätestens { $until }.
book-places-until-late = in mehr als einem Jahr
