# Not checked by a native speaker.
digest-table-number = nommer
digest-table-nickname = bynaam
digest-table-days-practised = dae geoefen
digest-table-right = { $strand } reg
digest-table-asked = { $strand } gevra
digest-table-pages = bladsye
digest-table-over-weeks = { $strand } oor vier weke

digest-table-practised = geoefen
digest-table-not_today = nie vandag nie
digest-table-silent = geen antwoord
digest-table-unsent = nie afgelewer nie

digest-table-rising = stygend
digest-table-steady = bestendig
digest-table-falling = dalend
digest-table-too_little = te min om te sê
digest-table-growth = { $evenings ->
    [one] { $trend } ({ $evenings } aand)
   *[other] { $trend } ({ $evenings } aande)
  }
