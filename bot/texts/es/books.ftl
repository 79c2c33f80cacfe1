# Not checked by a native speaker.
books-title = { $title }: cuadernos
books-line = { $number }. { $title }: { $settings }
books-settings = { $pages }, { $aDay } al día
books-none = Todavía ninguno. Por las tardes no se piden páginas.
books-one = Tóquelo para cambiarlo. Añada el siguiente con tiempo: quien termina pasa a él directamente.
books-several = Quien termina uno pasa al siguiente. Toque un cuaderno para cambiarlo.
books-own = { $count ->
    [one] { $count } niño o niña tiene un cuaderno propio, que va primero.
   *[other] { $count } niñas y niños tienen cuadernos propios, que van primero.
  }

books-place = { $settings }. Número { $place } de { $inLine }.
books-children = En curso: { $begun }. Terminado: { $done }. Sin empezar: { $notBegun }.
books-counts-from = Lo que cambie cuenta desde la próxima tarde. Nadie pierde una página.
books-tap-pages = Toque cuántas páginas al día:
books-too-early = Pronto para decir cuándo: la mitad de la clase necesita { $evenings } tardes con respuesta sobre las páginas.
books-finish = La mitad de la clase: { $half }. Nueve de cada diez: { $nearlyAll }.
books-never = no antes de un año
books-own-pace = Cada cual a su ritmo.
books-own-pace-of = Con datos de { $known } de { $children }, cada cual a su ritmo.

books-child = { $settings }. Propio de { $name }; va antes que los de la clase.
books-child-done = Terminado.
books-child-page = En la página { $page } de { $last }.

books-gone = Ese cuaderno ya está retirado.
books-no-book = No hay ningún cuaderno en el que fijar una página. Añada uno primero.
