# Not checked by a native speaker.
-book-questions-shape = die titel, die eerste en laaste bladsy, en die bladsye per dag
book-questions-example = Pebble Path 1-48 2
book-questions-new = Stuur die volgende werkboek: { -book-questions-shape }, soos hier:
book-questions-new-own = Stuur { $name } se eie werkboek: { -book-questions-shape }, soos hier:
book-questions-change = Stuur dit opnuut: { -book-questions-shape }. Nou is dit:
book-questions-bad-book = Ek kon { $typed } nie as ’n werkboek lees nie. Stuur { -book-questions-shape }, soos hier:

book-questions-range = Stuur ’n bladsy van { $first } tot { $last }, of “klaar”.
book-questions-page-of-class = Watter bladsy van { $book } is die klas se volgende? { $range }
book-questions-page-of-child = Watter bladsy van { $book } is { $name } se volgende? { $range }
book-questions-bad-page = { $typed } is nie ’n bladsy van { $book } nie. { $range }
book-questions-further = Kinders wat verder is, bly waar hulle is.

book-questions-added = { $book } is in die ry: { $pages }, { $aDay } per dag. Dit tel vanaf die volgende aand.
book-questions-changed = Gestoor. Dit tel vanaf die volgende aand; niemand verloor ’n bladsy nie.

book-questions-reached = bladsy { $page } van { $book } is volgende
book-questions-reached-end = { $book } is klaar
book-questions-set = { $name }: { $reached }. Dit tel vanaf die volgende aand.
book-questions-set-class = { $moved ->
    [one] { $moved } kind: { $reached }. Dit tel vanaf die volgende aand.
   *[other] { $moved } kinders: { $reached }. Dit tel vanaf die volgende aand.
  }
book-questions-set-already = Elke kind was reeds daar: { $reached }.
book-questions-stay = { $further ->
    [one] { $further } kind was verder en bly daar.
   *[other] { $further } kinders was verder en bly daar.
  }
