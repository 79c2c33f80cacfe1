# $title is a workbook's.
pages-done-count = { $title }: { $pages ->
    [one] { $pages } page
   *[other] { $pages } pages
  } done
pages-done-more = { $title }: { $pages ->
    [one] { $pages } page
   *[other] { $pages } pages
  } done, { $more ->
    [one] one more than planned. Well done!
   *[other] { $more } more than planned. Well done!
  }
pages-done-book = { $title } is done!
pages-done-next = { $title } is done! Next: { $next }, from page { $page }.
