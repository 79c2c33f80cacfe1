# Not checked by a native speaker.
book-places-title = { $title } : qui en est où
book-places-no-book = { $who } : pas de cahier
book-places-all-done = { $who } : tout est terminé
book-places-line = { $who } : { $book }, page { $page } sur { $last }, { $finish }
book-places-too_early = trop tôt pour le dire
book-places-standing = pas de pages ces temps-ci
book-places-no-children = Pas encore d’enfants.
book-places-dates = Les dates disent quand il sera terminé, au rythme de l’enfant.
book-places-dates-paged = Page { $page } sur { $pages }. { book-places-dates }

book-places-child-title = { $name } : cahiers
book-places-next-page = { $book } : la page { $page } sur { $last } vient ensuite.
book-places-child-no-book = Aucun. Les soirs ne demandent pas de pages.
book-places-child-all-done = Tous sont terminés.
book-places-pace = { $pages ->
    [one] { $pages } page par soir ces { $weeks } dernières semaines.
   *[other] { $pages } pages par soir ces { $weeks } dernières semaines.
  }
book-places-then = Ensuite { $book }, à partir de la page { $page }.
book-places-counted = Les pages sont celles que les aides ont touchées ; là où personne ne l’a fait, aucune n’est comptée.

book-places-child-too-early = Trop tôt pour dire quand il sera terminé : il faut { $evenings } soirs avec une réponse sur les pages.
book-places-child-standing = Pas de pages ces temps-ci, donc pas de date.
book-places-finish = Terminé { $when }.
book-places-finish-range = Terminé { $when } ; dans 8 cas sur 10, au plus tôt { $from } et au plus tard { $until }.
book-places-until-late = dans plus d’un an
