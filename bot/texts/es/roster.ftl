# Not checked by a native speaker.
roster-problems = Todavía no se ha añadido nada. Corrija esto y envíe otra vez la lista entera:
roster-line-long = Línea { $line }: { $value } tiene { $length } caracteres; el máximo es { $most }. Acórtelo.
roster-line-twice = Línea { $line }: { $value } está también en la línea { $first }. Añada una letra a uno de los dos.
roster-line-present = Línea { $line }: { $value } ya está en la clase. Quítelo o añada una letra.
roster-row-long = Fila { $line }: { $value } tiene { $length } caracteres; el máximo es { $most }. Acórtelo.
roster-row-twice = Fila { $line }: { $value } está también en la fila { $first }. Añada una letra a uno de los dos.
roster-row-present = Fila { $line }: { $value } ya está en la clase. Quítelo o añada una letra.
roster-and-more = y { $more } más
roster-empty = No he encontrado ningún apodo.
roster-too-many = Son { $sent } apodos; con los { $present } que ya hay pasan de { $most }.
roster-send-fewer = No se ha añadido nada. Envíe menos o cree otra clase.

roster-links = Un enlace para cada niño o niña. Dé a cada familia solo el suyo.
roster-links-note = Un enlace sirve para hasta cuatro acompañantes, durante 60 días. No guardo copia: un enlace nuevo sustituye al anterior.
roster-all-have = Nadie está sin acompañante. Para añadir otro, cree un enlace nuevo desde su nombre en la lista.
roster-without = { $children ->
    [one] { $children } niño o niña sin acompañante.
   *[other] { $children } niñas y niños sin acompañante.
  }
roster-make-links = ¿Crear enlaces nuevos? Los que se entregaron antes para ellos dejan de funcionar.
roster-links-made = Desde que se mostró esto se han creado enlaces; están más abajo. Si no ha llegado ninguna lista, toque otra vez.

roster-added = { $children ->
    [one] { $children } apodo añadido. ¿Cómo entrarán las familias?
   *[other] { $children } apodos añadidos. ¿Cómo entrarán las familias?
  }
roster-by-slip = { $button }: una hoja de acceso por apodo, en papel.
roster-by-link = { $button }: un enlace por apodo, para reenviar.
roster-not-yet = No se crea nada hasta que lo pida. Lo que cree después anula lo anterior.
roster-surname = Más de una palabra: { $nickname }. Solo apodos, por favor, sin apellidos.
roster-surnames = Más de una palabra: { $nickname } y { $more } más. Solo apodos, por favor, sin apellidos.
