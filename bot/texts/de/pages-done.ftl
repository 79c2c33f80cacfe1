# Not checked by a native speaker.
pages-done-count = { $title }: { $pages ->
    [one] { $pages } Seite
   *[other] { $pages } Seiten
  } geschafft
pages-done-more = { $title }: { $pages ->
    [one] { $pages } Seite
   *[other] { $pages } Seiten
  } geschafft, { $more ->
    [one] eine mehr als geplant. Gut gemacht!
   *[other] { $more } mehr als geplant. Gut gemacht!
  }
pages-done-book = { $title } ist geschafft!
pages-done-next = { $title } ist geschafft! Als Nächstes: { $next }, ab Seite { $page }.
