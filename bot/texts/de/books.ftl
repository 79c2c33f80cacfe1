# Not checked by a native speaker.
books-title = { $title }: Arbeitshefte
books-line = { $number }. { $title }: { $settings }
books-settings = { $pages }, { $aDay } am Tag
books-none = Noch keines. Abends wird nach keinen Seiten gefragt.
books-one = Tippen Sie es an, um es zu ändern. Fügen Sie das nächste rechtzeitig hinzu: Wer fertig ist, macht von selbst damit weiter.
books-several = Wer mit einem fertig ist, macht mit dem nächsten weiter. Zum Ändern ein Heft antippen.
books-own = { $count ->
    [one] { $count } Kind hat ein eigenes Heft, das zuerst kommt.
   *[other] { $count } Kinder haben eigene Hefte, die zuerst kommen.
  }

books-place = { $settings }. Nummer { $place } von { $inLine }.
books-children = Kinder darin: { $begun }. Fertig: { $done }. Noch nicht begonnen: { $notBegun }.
books-counts-from = Was Sie ändern, gilt ab dem nächsten Abend. Niemand verliert eine Seite.
books-tap-pages = Tippen Sie an, wie viele Seiten am Tag:
books-too-early = Für ein Datum zu früh: Die Hälfte der Kinder braucht je { $evenings } Abende mit einer Antwort zu den Seiten.
books-finish = Die Hälfte der Klasse: { $half }. Neun von zehn: { $nearlyAll }.
books-never = nicht innerhalb eines Jahres
books-own-pace = Im eigenen Tempo.
books-own-pace-of = Aus { $known } von { $children } Kindern, im eigenen Tempo.

books-child = { $settings }. Nur für { $name }; es kommt vor denen der Klasse.
books-child-done = Fertig.
books-child-page = Auf Seite { $page } von { $last }.

books-gone = Dieses Arbeitsheft ist schon weggelegt.
books-no-book = Es gibt kein Arbeitsheft, für das sich eine Seite angeben ließe. Fügen Sie erst eines hinzu.
