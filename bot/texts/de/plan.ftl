# Not checked by a native speaker.

plan-cards =
  { $count ->
    [one] { $count } Karte
   *[other] { $count } Karten
  }
plan-numbers =
  { $count ->
    [one] { $count } Zahl
   *[other] { $count } Zahlen
  }

plan-size = { $amount }, je { $seconds } s
plan-line = { $part }: { $size }

plan-and-more =
  { $count ->
    [one] { $step } und { $count } weiterer
   *[other] { $step } und { $count } weitere
  }

plan-usual-size = Üblicher Umfang: { $size }.
plan-shuffled = Die Karten kommen gemischt, von jedem etwa gleich viele.
plan-step-usual = { $step }, üblich für { $grade }
plan-step-not-usual = { $step }, nicht als üblich für { $grade } markiert

plan-statement = { $grade }: { $statement }.
plan-source = Mit unseren Worten, auf Englisch; { $source }.
plan-doubt-secondary = nur in einer Zusammenfassung gelesen
plan-doubt-memory = aus dem Gedächtnis, bitte prüfen
plan-not-usual = Nicht als üblich für { $grade } markiert.
plan-usual-elsewhere = Nicht als üblich für { $grade } markiert, aber für { $others }.
plan-no-source = Keine veröffentlichte Quelle: allgemeine Praxis.
plan-asked-for = Verlangt wird (mit unseren Worten, auf Englisch):
plan-other-places =
  { $count ->
    [one] und an { $count } weiteren Stelle
   *[other] und an { $count } weiteren Stellen
  }

plan-already-there = Das übt schon Teil { $part }. Bitte etwas anderes wählen.
plan-no-room-apart = Getrennt sind das { $parts } Teile, höchstens { $max } sind möglich. Entfernen Sie zuerst einen anderen Teil.
plan-none-last = Letzte Woche galt kein Plan.
plan-none-digest = Der Wochenbericht schlägt für diesen Plan noch nichts anderes vor.
plan-none-term = Der Abschnitt hat für den nächsten Abend keinen Plan.
plan-none-same = Dieser Plan gilt schon.
plan-put-in-use = Gilt ab dem nächsten Abend. Schon verschickte Übungen bleiben, wie sie sind.

plan-problem-empty = Der Plan braucht mindestens einen Teil. Fügen Sie zuerst einen hinzu.
plan-problem-parts = { $value } Teile sind zu viele: höchstens { $max }. Entfernen Sie einen.
plan-problem-cards = Teil { $part }: { $value } als Zahl der Karten geht nicht; möglich sind { $min } bis { $max }.
plan-problem-seconds = Teil { $part }: { $value } als Zahl der Sekunden geht nicht; möglich sind { $min } bis { $max }.
plan-problem-twice = Teil { $part } übt dasselbe wie ein anderer Teil. Bitte etwas anderes wählen.
plan-problem-mixed = Teil { $part } mischt { $value } Schritte; höchstens { $max } sind möglich. Nehmen Sie einen heraus.
plan-problem-unlike = Teil { $part }: Diese Schritte verlangen Verschiedenes und lassen sich nicht mischen. Lassen Sie sie getrennt.
plan-problem-unknown = Teil { $part } übt etwas, das diese Version nicht kennt. Bitte neu wählen.
