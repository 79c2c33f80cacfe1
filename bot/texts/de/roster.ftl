# Not checked by a native speaker.
roster-problems = Noch ist nichts hinzugefügt. Bitte verbessern Sie dies und senden Sie die ganze Liste noch einmal:
roster-line-long = Zeile { $line }: { $value } hat { $length } Zeichen, erlaubt sind höchstens { $most }. Bitte kürzen.
roster-line-twice = Zeile { $line }: { $value } steht auch in Zeile { $first }. Bitte bei einem einen Buchstaben anhängen.
roster-line-present = Zeile { $line }: { $value } ist schon in der Klasse. Bitte weglassen oder einen Buchstaben anhängen.
roster-row-long = Zeile { $line }: { $value } hat { $length } Zeichen, erlaubt sind höchstens { $most }. Bitte kürzen.
roster-row-twice = Zeile { $line }: { $value } steht auch in Zeile { $first }. Bitte bei einem einen Buchstaben anhängen.
roster-row-present = Zeile { $line }: { $value } ist schon in der Klasse. Bitte weglassen oder einen Buchstaben anhängen.
roster-and-more = und { $more } weitere
roster-empty = Darin habe ich keine Spitznamen gefunden.
roster-too-many = Das sind { $sent } Spitznamen; mit den { $present }, die schon da sind, werden es mehr als { $most }.
roster-send-fewer = Nichts wurde hinzugefügt. Senden Sie weniger oder legen Sie eine zweite Klasse an.

roster-links = Ein Link für jedes Kind. Geben Sie jeder Familie nur ihren eigenen.
roster-links-note = Ein Link gilt für bis zu vier Begleitpersonen, 60 Tage lang. Ich behalte keine Kopie: Ein neuer Link ersetzt den alten.
roster-all-have = Jedes Kind hat eine Begleitperson. Für eine weitere erstellen Sie bei diesem Kind einen neuen Link.
roster-without = { $children ->
    [one] { $children } Kind hat keine Begleitperson.
   *[other] { $children } Kinder haben keine Begleitperson.
  }
roster-make-links = Neue Links für sie erstellen? Links, die für diese Kinder schon ausgegeben sind, gelten dann nicht mehr.
roster-links-made = Inzwischen wurden Links erstellt; sie stehen weiter unten. Kam keine Liste, tippen Sie noch einmal.

roster-added = { $children ->
    [one] { $children } Kind hinzugefügt. Wie kommen die Familien dazu?
   *[other] { $children } Kinder hinzugefügt. Wie kommen die Familien dazu?
  }
roster-by-slip = { $button }: ein Zettel für jedes Kind, auf Papier.
roster-by-link = { $button }: ein Link für jedes Kind, zum Weitergeben.
roster-not-yet = Nichts davon entsteht, bevor Sie es möchten. Was Sie später erstellen, ersetzt das Frühere.
roster-surname = Mehr als ein Wort: { $nickname }. Bitte nur Spitznamen, keine Nachnamen.
roster-surnames = { $more ->
    [one] Mehr als ein Wort: { $nickname } und { $more } weiterer. Bitte nur Spitznamen, keine Nachnamen.
   *[other] Mehr als ein Wort: { $nickname } und { $more } weitere. Bitte nur Spitznamen, keine Nachnamen.
  }
