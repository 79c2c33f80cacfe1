# Not checked by a native speaker.
digest-calls-unreachable = les messages n’arrivent plus
digest-calls-undelivered = { $evenings ->
    [one] { $evenings } soir non remis
   *[other] { $evenings } soirs de suite non remis
  }
digest-calls-silent = { $evenings ->
    [one] { $evenings } soir sans réponse
   *[other] { $evenings } soirs de suite sans réponse
  }
digest-calls-left = l’aide a arrêté
digest-calls-not_joined = personne ne s’est encore inscrit pour aider

digest-calls-kindly-unreachable = Le téléphone a-t-il changé ? Un nouveau feuillet permet de revenir.
digest-calls-kindly-undelivered = Cela ne venait pas de la famille. Le téléphone a-t-il Internet ?
digest-calls-kindly-silent = Une autre heure conviendrait-elle mieux, ou une séance plus courte ?
digest-calls-kindly-left = Quelqu’un d’autre aimerait-il s’asseoir avec l’enfant ? Un nouveau feuillet suffit.
digest-calls-kindly-not_joined = Le feuillet est-il arrivé ? On peut en imprimer un autre.

digest-calls-who-and-why = { $who } ({ $why })
digest-calls-to-call = À appeler : { $families }.
digest-calls-stopped = Ne reçoivent rien : { $families }.

digest-calls-title = Familles à appeler
digest-calls-title-paged = Familles à appeler, page { $page } sur { $pages }
digest-calls-line = { $who } : { $why }. { $kindly }
digest-calls-none = Personne pour l’instant.
