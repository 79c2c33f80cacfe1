# Not checked by a native speaker.
child-page-none = Noch kein Abend, von dem zu berichten wäre.
child-page-practised = { $days ->
    [one] Seit { $first } an { $practised } von { $days } Schultag geübt.
   *[other] Seit { $first } an { $practised } von { $days } Schultagen geübt.
  }
child-page-week = Letzte sieben Tage: { $said }.
child-page-week-practised = geübt { $days }
child-page-week-not_today = „heute nicht“ { $days }
child-page-week-silent = keine Antwort { $days }
child-page-week-unsent = nicht zugestellt { $days }

child-page-sure = Sicher: { $steps }.
child-page-meeting = Lernt gerade kennen: { $facts }.
child-page-right = In dieser Zeit gewusst: { $told }.
child-page-tally = { $strand } { $right } von { $asked }
child-page-caution = Was die Begleitperson markiert hat, verglichen nur mit früheren Abenden dieses Kindes. Kein Test und keine Diagnose.

child-page-family-none = Familie: noch niemand dabei.
child-page-family-left = Familie: Die Begleitperson ist ausgestiegen.
child-page-family-unheard = { $helpers ->
    [one] Familie: { $helpers } Begleitperson, noch nichts gehört.
   *[other] Familie: { $helpers } Begleitpersonen, noch nichts gehört.
  }
child-page-family-heard = { $helpers ->
    [one] Familie: { $helpers } Begleitperson, zuletzt etwas gehört am { $day }.
   *[other] Familie: { $helpers } Begleitpersonen, zuletzt etwas gehört am { $day }.
  }
child-page-family-unreached-unheard = { $helpers ->
    [one] Familie: { $helpers } Begleitperson, Nachrichten kommen nicht mehr an, noch nichts gehört.
   *[other] Familie: { $helpers } Begleitpersonen, Nachrichten kommen nicht mehr an, noch nichts gehört.
  }
child-page-family-unreached-heard = { $helpers ->
    [one] Familie: { $helpers } Begleitperson, Nachrichten kommen nicht mehr an, zuletzt etwas gehört am { $day }.
   *[other] Familie: { $helpers } Begleitpersonen, Nachrichten kommen nicht mehr an, zuletzt etwas gehört am { $day }.
  }

child-page-say = { $child }: gemeinsam laut aufsagen
child-page-say-how = Das Unsicherste zuerst. Eine Minute reicht: sagen, noch einmal sagen, weiter.
child-page-say-none = Noch ist nichts markiert.

child-page-books-done = Arbeitsheft: alles fertig.
child-page-book = Arbeitsheft: { $book }, auf Seite { $page } von { $last }.
