# Not checked by a native speaker.
pages-done-count = { $title }: { $pages ->
    [one] { $pages } bladsy
   *[other] { $pages } bladsye
  } gedoen
pages-done-more = { $title }: { $pages ->
    [one] { $pages } bladsy
   *[other] { $pages } bladsye
  } gedoen, { $more ->
    [one] een meer as beplan. Mooi so!
   *[other] { $more } meer as beplan. Mooi so!
  }
pages-done-book = { $title } is klaar!
pages-done-next = { $title } is klaar! Volgende: { $next }, vanaf bladsy { $page }.
