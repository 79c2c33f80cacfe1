# Not checked by a native speaker.

term-weeks =
  { $count ->
    [one] { $count } Woche
   *[other] { $count } Wochen
  }
term-title = { $class }: der Abschnitt, { $weeks }
term-begins = Beginnt am { $day }.
term-no-days = Es stehen keine Schultage mehr an.
term-over = Er ist vorbei; der letzte Plan gilt weiter.
term-next = Der nächste Abend liegt in Woche { $week }.
term-by-itself = Jede Woche kommt von selbst, außer Sie übernehmen für sie einen anderen Plan.

term-as-before = wie zuvor
term-new = neu: { $steps }
term-new-more =
  { $count ->
    [one] neu: { $steps } und { $count } weiterer
   *[other] neu: { $steps } und { $count } weitere
  }

term-week = Woche { $week } von { $of }
term-week-from = Woche { $week } von { $of }, ab { $day }
term-week-now = Der nächste Abend liegt in dieser Woche: Eine Änderung gilt ab dann.
term-week-over = Diese Woche ist vorbei.

term-new-title = { $class }: ein neuer Abschnitt
term-from-steps =
  { $count ->
    [one] Aus den Schritten, die üblich sind für { $grade }: insgesamt { $count } Schritt, leichtere zuerst.
   *[other] Aus den Schritten, die üblich sind für { $grade }: insgesamt { $count } Schritte, leichtere zuerst.
  }
term-ask = Wie viele Wochen, welche Schritte des Jahres und ab wann?
term-passed-over = Wochen ohne Schule werden übersprungen. Jede Woche lässt sich später ändern.
term-needs-grade = Ein Abschnitt entsteht aus den Schritten, die für eine Klassenstufe üblich sind. Wählen Sie zuerst Lehrplan und Klassenstufe.

term-share-all = Das ganze Jahr
term-share-first = Erstes Drittel
term-share-second = Zweites Drittel
term-share-last = Letztes Drittel
term-make = Anlegen, ab { $day }
term-week-button = Woche { $week }

term-moved-on = Der Abschnitt hat sich inzwischen geändert. Hier wurde nichts geändert.
