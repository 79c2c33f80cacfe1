# Not checked by a native speaker.
digest-calls-unreachable = boodskappe kom nie meer aan nie
digest-calls-undelivered = { $evenings ->
    [one] { $evenings } aand nie afgelewer nie
   *[other] { $evenings } aande na mekaar nie afgelewer nie
  }
digest-calls-silent = { $evenings ->
    [one] { $evenings } aand sonder antwoord
   *[other] { $evenings } aande na mekaar sonder antwoord
  }
digest-calls-left = die helper het opgehou
digest-calls-not_joined = nog geen helper het aangesluit nie

digest-calls-kindly-unreachable = Is daar ’n nuwe foon? Met ’n nuwe briefie kan hulle weer aansluit.
digest-calls-kindly-undelivered = Dit was nie hulle skuld nie. Het die foon data?
digest-calls-kindly-silent = Sou ’n ander tyd pas, of ’n korter oefening?
digest-calls-kindly-left = Wil iemand anders by die kind sit? Met ’n nuwe briefie kan hulle aansluit.
digest-calls-kindly-not_joined = Het die briefie aangekom? ’n Nuwe een kan gedruk word.

digest-calls-who-and-why = { $who } ({ $why })
digest-calls-to-call = Om te bel: { $families }.
digest-calls-stopped = Ontvang niks nie: { $families }.

digest-calls-title = Gesinne om te bel
digest-calls-title-paged = Gesinne om te bel, bladsy { $page } van { $pages }
digest-calls-line = { $who }: { $why }. { $kindly }
digest-calls-none = Niemand op die oomblik nie.
