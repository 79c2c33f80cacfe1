# Not checked by a native speaker.
-book-questions-shape = el título, la primera y la última página, y las páginas al día
book-questions-example = Pebble Path 1-48 2
book-questions-new = Envíe el próximo cuaderno: { -book-questions-shape }, así:
book-questions-new-own = Envíe el cuaderno propio de { $name }: { -book-questions-shape }, así:
book-questions-change = Envíelo de nuevo: { -book-questions-shape }. Ahora es:
book-questions-bad-book = No he podido leer { $typed } como cuaderno. Envíe { -book-questions-shape }, así:

book-questions-range = Envíe una página de { $first } a { $last }, o «listo».
book-questions-page-of-class = ¿Qué página de { $book } es la siguiente de la clase? { $range }
book-questions-page-of-child = ¿Qué página de { $book } es la siguiente de { $name }? { $range }
book-questions-bad-page = { $typed } no es una página de { $book }. { $range }
book-questions-further = Quien va más adelante se queda donde está.

book-questions-added = { $book } está en la lista: { $pages }, { $aDay } al día. Cuenta desde la próxima tarde.
book-questions-changed = Guardado. Cuenta desde la próxima tarde; nadie pierde una página.

book-questions-reached = sigue la página { $page } de { $book }
book-questions-reached-end = { $book } está terminado
book-questions-set = { $name }: { $reached }. Cuenta desde la próxima tarde.
book-questions-set-class = { $moved ->
    [one] { $moved } niño o niña: { $reached }. Cuenta desde la próxima tarde.
   *[other] { $moved } niñas y niños: { $reached }. Cuenta desde la próxima tarde.
  }
book-questions-set-already = Toda la clase estaba ya ahí: { $reached }.
book-questions-stay = { $further ->
    [one] { $further } niño o niña iba más adelante y se queda ahí.
   *[other] { $further } niñas y niños iban más adelante y se quedan ahí.
  }
