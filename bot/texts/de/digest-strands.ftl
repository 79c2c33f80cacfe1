# Not checked by a native speaker.
digest-strands-secure-means = Sicher: Wir erwarten 9 von 10 richtig, gestützt auf mindestens { $answers } Antworten.

digest-strands-new = neu diese Woche
digest-strands-new_step = neuer Schritt
digest-strands-same = etwa wie letzte Woche
digest-strands-up = gestiegen, vorher { $percent } %
digest-strands-down = gesunken, vorher { $percent } %

digest-strands-tally = { $strand } { $right } von { $asked }
digest-strands-changed = { $tally } ({ $change })
digest-strands-line = Richtige Antworten: { $tallies }.
digest-strands-line-all-new = Richtige Antworten: { $tallies }. Alles neu diese Woche.
digest-strands-line-all-same = Richtige Antworten: { $tallies }. Alles etwa wie letzte Woche.
digest-strands-line-others-same = Richtige Antworten: { $tallies }. Das Übrige etwa wie letzte Woche.

digest-strands-title = Richtige Antworten nach Bereich
digest-strands-nothing = In diesen Tagen hat niemand geübt. Es lässt sich nichts sagen.
digest-strands-row = { $tally }, { $change }
digest-strands-secure = { $secure } von { $children } sicher
digest-strands-not-yet = { $count } noch nicht
digest-strands-rose = { $count } gestiegen
digest-strands-slipped = { $count } gesunken
digest-strands-legend = Letzte Woche: dieselben Kinder bei denselben Schritten.
digest-strands-legend-own = { digest-strands-legend } Gestiegen und gesunken: gegenüber den eigenen vier Wochen des Kindes.
