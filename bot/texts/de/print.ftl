# Not checked by a native speaker.
print-a4 = A4
print-letter = Letter
print-on = { $paper } drucken

print-title = { $title }: drucken
print-slips-none = Zettel zum Mitmachen: Jedes Kind hat eine Begleitperson.
print-slips = { $missing ->
    [one] Zettel zum Mitmachen: für { $missing } Kind ohne Begleitperson. Links, die für dieses Kind schon ausgegeben sind, gelten dann nicht mehr.
   *[other] Zettel zum Mitmachen: für { $missing } Kinder ohne Begleitperson. Links, die für diese Kinder schon ausgegeben sind, gelten dann nicht mehr.
  }
print-cards = Karten: die des Wochenplans, zum Ausschneiden, und alle Lösungen.
print-sheets-none = Übungsblätter: eines ohne Namen.
print-sheets = { $offline ->
    [one] Übungsblätter: für { $offline } Kind, dessen Familie keine Nachrichten bekommt, und eines ohne Namen.
   *[other] Übungsblätter: für { $offline } Kinder, deren Familien keine Nachrichten bekommen, und eines ohne Namen.
  }
print-squares = Zahlentafeln: 1 bis 100 und 101 bis 200.

print-slips-sent = { $children ->
    [one] Zettel für { $children } Kind. Schneiden Sie sie auseinander und geben Sie jeder Familie nur ihren eigenen.
   *[other] Zettel für { $children } Kinder. Schneiden Sie sie auseinander und geben Sie jeder Familie nur ihren eigenen.
  }
print-slips-work = Sie gelten für bis zu vier Begleitpersonen, bis { $until }. Ich behalte keine Kopie: Neue Zettel ersetzen diese.
print-cards-sent = Beidseitig drucken und über die lange Kante wenden: Hinter jeder Karte steht ihre Lösung. Am Ende kommen alle Lösungen zusammen.
print-sheet-sent = Ein Übungsblatt ohne Namen.
print-sheets-sent = { $children ->
    [one] Übungsblätter für { $children } Kind und eines ohne Namen. Geben Sie jeder Familie nur ihr eigenes.
   *[other] Übungsblätter für { $children } Kinder und eines ohne Namen. Geben Sie jeder Familie nur ihr eigenes.
  }
print-squares-sent = Zahlentafeln, 1 bis 100 und 101 bis 200.

print-no-slips = Jedes Kind hat eine Begleitperson, oder es gibt noch keine Kinder. Nichts zu drucken.
print-no-plan = Es ist noch kein Wochenplan in Gebrauch. Erstellen Sie einen unter „{ $button }“ und drucken Sie dann.
print-no-days = In dieser und der nächsten Woche ist kein Schultag. Drucken Sie, wenn die freien Tage fast vorbei sind.

print-code-wrong = Das sieht nach einem Code vom Zettel aus, aber ein Buchstabe oder eine Ziffer stimmt nicht.
print-code-length = Das sieht nach einem Code vom Zettel aus, aber ich habe { $letters } Buchstaben und Ziffern gelesen; ein Code hat { $length }.
print-code-again = Bitte vergleichen Sie ihn mit dem Zettel und senden Sie ihn noch einmal. Die Buchstaben O, I, L und U kommen nie vor.
