# Not checked by a native speaker.
digest-caution = Die Angaben stammen von den Begleitpersonen. Ein fehlender Abend ist keine Null. Ein Ergebnis ist keine Diagnose.

digest-first-line = { $title }: { $headline }.
digest-no-evenings = über keinen Abend zu berichten
digest-all-left = alle Begleitpersonen haben aufgehört
digest-none-joined = noch keine Familie dabei
digest-practised-three = { $practised ->
    [one] { $practised } von { $joined } hat an drei oder mehr Tagen geübt
   *[other] { $practised } von { $joined } haben an drei oder mehr Tagen geübt
  }
digest-practised-both = { $practised ->
    [one] { $practised } von { $joined } hat an beiden Tagen geübt
   *[other] { $practised } von { $joined } haben an beiden Tagen geübt
  }
digest-practised-one = { $practised ->
    [one] { $practised } von { $joined } hat an dem einen Tag geübt
   *[other] { $practised } von { $joined } haben an dem einen Tag geübt
  }
digest-ready = bereit für den nächsten Schritt: { $steps }
digest-none-ready = noch nichts bereit für den nächsten Schritt
digest-to-call = Familien zum Anrufen: { $count }

digest-evenings = { $days }: { $ended }.
digest-practised = { $count ->
    [one] { $count } Abend geübt
   *[other] { $count } Abende geübt
  }
digest-put-off = { $count } verschoben
digest-unanswered = { $count } ohne Antwort
digest-undelivered = { $count } nicht zugestellt
digest-no-days = In diesen sieben Tagen war kein Schultag.

digest-wobbling = Zum Anschauen: { $facts }.
digest-splitting = Aufteilen lohnt sich: { $steps }.
digest-workbook = { $count ->
    [one] Arbeitsheft: { $count } Seite erledigt.
   *[other] Arbeitsheft: { $count } Seiten erledigt.
  }
digest-steps-and-more = { $shown } und { $more } weitere

digest-facts-title = Aufgaben zum Anschauen
digest-fact = { $children ->
    [one] { $facts }: { $missed } von { $asked } noch nicht gewusst, von einem Kind
   *[other] { $facts }: { $missed } von { $asked } noch nicht gewusst, von { $children } Kindern
  }
digest-facts-rule = Von zwei oder mehr Kindern noch nicht gewusst, oder von einem an zwei Tagen.
digest-facts-none = Nichts, was zwei Kinder noch nicht wussten oder eines an zwei Tagen.
