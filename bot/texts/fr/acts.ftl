# Not checked by a native speaker.
acts-some-child = un enfant
acts-greeting-replaced = petit mot remplacé
acts-greeting-removed = petit mot retiré
acts-children-added = { $count ->
    [one] { $count } enfant ajouté
   *[other] { $count } enfants ajoutés
  }
acts-child-archived = { $child } aux archives
acts-child-moved = { $child } dans une autre classe
acts-proposal = étapes du plan de la semaine
acts-plan-used = plan de la semaine appliqué
acts-book-changed = { $book } modifié
acts-book-put-away = { $book } rangé
acts-draft = changements du plan abandonnés
acts-term-ended = trimestre terminé
acts-term-made = trimestre créé
acts-breaks-added = { $count ->
    [one] { $count } congé ajouté
   *[other] { $count } congés ajoutés
  }
acts-break-removed = congé { $title } retiré
acts-class-archived = classe archivée
acts-teacher-removed = co-enseignant retiré
acts-term-week = semaine { $week } du trimestre retirée
acts-pages = { $count ->
    [one] page de { $count } enfant dans { $book }
   *[other] page de { $count } enfants dans { $book }
  }
acts-page = { $child }, page dans { $book }

acts-none = Il n’y a rien à défaire. Ce que vous changez peut être défait pendant un jour.
acts-title = Ce qui peut être défait
acts-tap = Touchez ce qui doit redevenir comme avant. Cela reste possible pendant un jour.
acts-on-page = Page { $page } sur { $pages }
acts-again = C’était déjà défait.
acts-taken-back = Défait : { $act }.
acts-for-teachers = /undo est pour les enseignants. Pour modifier une réponse, touchez « { $fix } » sous le résultat ; /today montre la séance du jour.
