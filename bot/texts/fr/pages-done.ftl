# Not checked by a native speaker.
pages-done-count = { $title } : { $pages ->
    [one] { $pages } page faite
   *[other] { $pages } pages faites
  }
pages-done-more = { $title } : { $pages ->
    [one] { $pages } page faite
   *[other] { $pages } pages faites
  }, { $more ->
    [one] une de plus que prévu. Bravo !
   *[other] { $more } de plus que prévu. Bravo !
  }
pages-done-book = { $title } est terminé !
pages-done-next = { $title } est terminé ! Ensuite : { $next }, à partir de la page { $page }.
