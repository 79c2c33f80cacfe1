# Not checked by a native speaker.
book-places-title = { $title }: wie is waar
book-places-no-book = { $who }: geen werkboek nie
book-places-all-done = { $who }: alles klaar
book-places-line = { $who }: { $book }, bladsy { $page } van { $last }, { $finish }
book-places-too_early = te vroeg om te sê
book-places-standing = die laaste tyd geen bladsye nie
book-places-no-children = Nog geen kinders nie.
book-places-dates = Datums sê wanneer dit klaar is, teen die kind se eie pas.
book-places-dates-paged = Bladsy { $page } van { $pages }. { book-places-dates }

book-places-child-title = { $name }: werkboeke
book-places-next-page = { $book }: bladsy { $page } van { $last } is volgende.
book-places-child-no-book = Geen nie. Die aande vra geen bladsye nie.
book-places-child-all-done = Almal is klaar.
book-places-pace = { $pages ->
    [one] { $pages } bladsy per aand in die laaste { $weeks } weke.
   *[other] { $pages } bladsye per aand in die laaste { $weeks } weke.
  }
book-places-then = Dan { $book }, vanaf bladsy { $page }.
book-places-counted = Bladsye is wat die helpers getik het; waar niemand getik het nie, tel geen.

book-places-child-too-early = Te vroeg om te sê wanneer dit klaar is: dit verg { $evenings } aande met ’n antwoord oor bladsye.
book-places-child-standing = Die laaste tyd geen bladsye nie, dus is daar geen datum nie.
book-places-finish = Klaar { $when }.
book-places-finish-range = Klaar { $when }; in 8 uit 10 gevalle op die vroegste { $from }, op die laatste { $until }.
book-places-until-late = oor meer as ’n jaar
