# Not checked by a native speaker.
child-picture-evenings = { $count ->
    [one] { $count } Abend in zwölf Wochen
   *[other] { $count } Abende in zwölf Wochen
  }
child-picture-footer = Nur die eigenen Abende dieses Kindes. Balken zeigen, wie viel gewusst war, so wie die Begleitperson es markiert hat; ein kurzer Strich ist eine Woche ohne Markierungen.
child-picture-sent = { $child }: nur die eigenen Abende, ohne Vergleich mit anderen.
child-picture-none = Noch gibt es nichts zu zeichnen: In den letzten zwölf Wochen wurde kein Abend dieses Kindes markiert.
