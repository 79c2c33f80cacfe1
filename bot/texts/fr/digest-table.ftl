# Not checked by a native speaker.
digest-table-number = numéro
digest-table-nickname = surnom
digest-table-days-practised = soirs faits
digest-table-right = { $strand } : justes
digest-table-asked = { $strand } : questions
digest-table-pages = pages
digest-table-over-weeks = { $strand } sur quatre semaines

digest-table-practised = fait
digest-table-not_today = pas aujourd’hui
digest-table-silent = pas de réponse
digest-table-unsent = non remis

digest-table-rising = en hausse
digest-table-steady = stable
digest-table-falling = en baisse
digest-table-too_little = trop peu pour le dire
digest-table-growth = { $evenings ->
    [one] { $trend } ({ $evenings } soir)
   *[other] { $trend } ({ $evenings } soirs)
  }
