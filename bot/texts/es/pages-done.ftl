# Not checked by a native speaker.
pages-done-count = { $title }: { $pages ->
    [one] { $pages } página hecha
   *[other] { $pages } páginas hechas
  }
pages-done-more = { $title }: { $pages ->
    [one] { $pages } página hecha
   *[other] { $pages } páginas hechas
  }, { $more ->
    [one] una más de lo previsto. ¡Muy bien!
   *[other] { $more } más de lo previsto. ¡Muy bien!
  }
pages-done-book = ¡{ $title } está terminado!
pages-done-next = ¡{ $title } está terminado! Ahora sigue { $next }, desde la página { $page }.
