# Not checked by a native speaker.
book-places-title = { $title }: por dónde va cada cual
book-places-no-book = { $who }: sin cuaderno
book-places-all-done = { $who }: todo terminado
book-places-line = { $who }: { $book }, página { $page } de { $last }, { $finish }
book-places-too_early = pronto para decirlo
book-places-standing = sin páginas últimamente
book-places-no-children = Todavía no hay nadie.
book-places-dates = Las fechas dicen cuándo se termina, al ritmo de cada cual.
book-places-dates-paged = Página { $page } de { $pages }. { book-places-dates }

book-places-child-title = { $name }: cuadernos
book-places-next-page = { $book }: sigue la página { $page } de { $last }.
book-places-child-no-book = Ninguno. Por las tardes no se piden páginas.
book-places-child-all-done = Todos están terminados.
book-places-pace = { $pages ->
    [one] { $pages } página por tarde en las últimas { $weeks } semanas.
   *[other] { $pages } páginas por tarde en las últimas { $weeks } semanas.
  }
book-places-then = Después { $book }, desde la página { $page }.
book-places-counted = Las páginas son las que tocaron los acompañantes; si nadie tocó, no se cuenta ninguna.

book-places-child-too-early = Pronto para decir cuándo se termina: hacen falta { $evenings } tardes con respuesta sobre las páginas.
book-places-child-standing = Sin páginas últimamente, así que no hay fecha.
book-places-finish = Se termina { $when }.
book-places-finish-range = Se termina { $when }; en 8 de cada 10 casos, como pronto { $from } y como tarde { $until }.
book-places-until-late = dentro de más de un año
