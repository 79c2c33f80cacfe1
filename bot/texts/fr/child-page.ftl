# Not checked by a native speaker.
child-page-none = Encore aucun soir à raconter.
child-page-practised = { $days ->
    [one] Depuis le { $first }, séance faite { $practised } fois sur { $days } jour de classe.
   *[other] Depuis le { $first }, séance faite { $practised } fois sur { $days } jours de classe.
  }
child-page-week = Sept derniers jours : { $said }.
child-page-week-practised = fait { $days }
child-page-week-not_today = « pas aujourd’hui » { $days }
child-page-week-silent = sans réponse { $days }
child-page-week-unsent = non reçu { $days }

child-page-sure = Bien acquis : { $steps }.
child-page-meeting = En cours de découverte : { $facts }.
child-page-right = Réponses justes pendant ce temps : { $told }.
child-page-tally = { $strand } { $right } sur { $asked }
child-page-caution = Ce que l’aide a noté, comparé au seul passé de cet enfant. Ni un test, ni un diagnostic.

child-page-family-none = Famille : personne n’est encore inscrit.
child-page-family-left = Famille : la personne qui aidait est partie.
child-page-family-unheard = { $helpers ->
    [one] Famille : { $helpers } aide, pas encore de nouvelles.
   *[other] Famille : { $helpers } aides, pas encore de nouvelles.
  }
child-page-family-heard = { $helpers ->
    [one] Famille : { $helpers } aide, dernières nouvelles le { $day }.
   *[other] Famille : { $helpers } aides, dernières nouvelles le { $day }.
  }
child-page-family-unreached-unheard = { $helpers ->
    [one] Famille : { $helpers } aide, les messages n’arrivent plus, pas encore de nouvelles.
   *[other] Famille : { $helpers } aides, les messages n’arrivent plus, pas encore de nouvelles.
  }
child-page-family-unreached-heard = { $helpers ->
    [one] Famille : { $helpers } aide, les messages n’arrivent plus, dernières nouvelles le { $day }.
   *[other] Famille : { $helpers } aides, les messages n’arrivent plus, dernières nouvelles le { $day }.
  }

child-page-say = { $child } : à dire ensemble à voix haute
child-page-say-how = Le moins sûr d’abord. Une minute suffit : le dire, le redire, continuer.
child-page-say-none = Rien n’a encore été noté.

child-page-books-done = Cahier : tout est fait.
child-page-book = Cahier : { $book }, à la page { $page } sur { $last }.
