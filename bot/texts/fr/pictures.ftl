# Not checked by a native speaker.

pictures-start = départ
pictures-to-say = à dire

pictures-start-at = Commence à { $number }.
pictures-count-on = Compte { $steps }.
pictures-count-back = Compte à rebours { $steps }.

pictures-score = { $right } sur { $asked }
pictures-position = { $card } sur { $of }
pictures-seconds =
  { $count ->
    [one] { $count } seconde par carte
   *[other] { $count } secondes par carte
  }
pictures-say-each = Dis chaque réponse à voix haute.
pictures-finished = C’était la dernière carte.
pictures-mark-together = Maintenant, regardez ensemble.
pictures-say-again = À redire au petit-déjeuner

pictures-practised = fait
pictures-not-today = pas aujourd’hui
pictures-silent = pas de réponse
pictures-unsent = non remis
pictures-not-asked = pas demandé

pictures-secure = acquis
pictures-growing = en cours
pictures-not-yet = pas encore
pictures-too-few = trop peu

pictures-no-evening = Encore aucun soir ce trimestre
pictures-evenings =
  { $count ->
    [one] { $count } soir ce trimestre
   *[other] { $count } soirs ce trimestre
  }
pictures-percent = { $hundredths } %
