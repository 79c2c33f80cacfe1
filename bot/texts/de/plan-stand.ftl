# Not checked by a native speaker.

plan-stand-title = { $class }: Wochenplan
plan-stand-nothing = Noch nichts. Fügen Sie einen Teil hinzu.

plan-stand-evening = Etwa { $minutes } pro Abend.
plan-stand-evening-pages =
  { $pages ->
    [one] Etwa { $minutes } pro Abend, dann { $pages } Seite aus { $book }.
   *[other] Etwa { $minutes } pro Abend, dann { $pages } Seiten aus { $book }.
  }

plan-stand-full = Mehr als { $max } Teile gehen nicht: Entfernen Sie einen, um einen anderen hinzuzufügen.

plan-stand-draft-teacher = Geändert, gilt noch nicht.
plan-stand-draft-proposal = Wie im Wochenbericht vorgeschlagen, gilt noch nicht.
plan-stand-draft-scheme = Wie im Abschnitt, gilt noch nicht.

plan-stand-in-use = Gilt jetzt.
plan-stand-proposed = Gilt jetzt, wie im Wochenbericht vorgeschlagen.
plan-stand-term-over = Gilt jetzt. Der Abschnitt ist vorbei; sein letzter Plan bleibt.
plan-stand-term = Gilt jetzt, aus dem Abschnitt.
plan-stand-term-week = Gilt jetzt, aus dem Abschnitt: Woche { $week } von { $of }.
plan-stand-until-term = Gilt, bis der Abschnitt beginnt.
plan-stand-instead = Gilt diese Woche statt Woche { $week } von { $of } des Abschnitts.
