# Not checked by a native speaker.

steps-size =
  { $step ->
    [one] in { $step }er-Schritten
   *[other] in { $step }er-Schritten
  }

steps-like = { $steps } ({ $numbers })

steps-across = { $steps } über { $number }er

steps-label-on = { $steps } bis { $limit }
steps-label-back = rückwärts { $steps }, 0–{ $limit }
steps-whole-on = { $steps } zählen bis { $limit }
steps-whole-back = rückwärts { $steps }, 0–{ $limit }
steps-limit-on = bis { $limit }
steps-limit-back = rückwärts, 0–{ $limit }

steps-practised = Was soll geübt werden?
steps-mixed-in = Was soll dazugemischt werden?
steps-same-kind = Nur was dieselbe Art Antwort verlangt, lässt sich mischen.
steps-which = { $strand }: welcher Schritt?
steps-page = Seite { $page } von { $pages }, leichtere Schritte zuerst.
steps-counting-in = Zählen: in welchen Schritten?
steps-how-far = Zählen { $steps }: wie weit?

steps-has-usual = { $sign } enthält Schritte, die üblich sind für { $grade }
steps-usual = { $sign } üblich für { $grade }
steps-none-usual = Keiner davon ist als üblich für { $grade } markiert.
