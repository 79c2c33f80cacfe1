# Not checked by a native speaker.
digest-caution = Les résultats sont ceux que notent les aides. Un soir manquant n’est pas un zéro. Un score n’est pas un diagnostic.

digest-first-line = { $title } : { $headline }.
digest-no-evenings = aucun soir à raconter
digest-all-left = toutes les aides ont arrêté
digest-none-joined = aucune famille ne s’est encore inscrite
digest-practised-three = { $practised ->
    [one] { $practised } sur { $joined } s’est exercé trois jours ou plus
   *[other] { $practised } sur { $joined } se sont exercés trois jours ou plus
  }
digest-practised-both = { $practised ->
    [one] { $practised } sur { $joined } s’est exercé les deux jours
   *[other] { $practised } sur { $joined } se sont exercés les deux jours
  }
digest-practised-one = { $practised ->
    [one] { $practised } sur { $joined } s’est exercé ce jour-là
   *[other] { $practised } sur { $joined } se sont exercés ce jour-là
  }
digest-ready = prêt pour l’étape suivante : { $steps }
digest-none-ready = aucun changement d’étape pour l’instant
digest-to-call = familles à appeler : { $count }

digest-evenings = { $days } : { $ended }.
digest-practised = { $count ->
    [one] { $count } soir fait
   *[other] { $count } soirs faits
  }
digest-put-off = { $count ->
    [one] { $count } reporté
   *[other] { $count } reportés
  }
digest-unanswered = { $count } sans réponse
digest-undelivered = { $count } non remis
digest-no-days = Aucun jour d’école pendant ces sept jours.

digest-wobbling = À revoir : { $facts }.
digest-splitting = À partager en groupes : { $steps }.
digest-workbook = { $count ->
    [one] Cahier : { $count } page faite.
   *[other] Cahier : { $count } pages faites.
  }
digest-steps-and-more = { $shown } et { $more } de plus

digest-facts-title = Calculs à revoir
digest-fact = { $children ->
    [one] { $facts } : pas encore su { $missed } fois sur { $asked }, par { $children } enfant
   *[other] { $facts } : pas encore su { $missed } fois sur { $asked }, par { $children } enfants
  }
digest-facts-rule = Pas encore su par deux enfants ou plus, ou par un seul sur deux jours.
digest-facts-none = Rien qui ait manqué à deux enfants, ou à un seul sur deux jours.
