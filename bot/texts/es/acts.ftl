# Not checked by a native speaker.
acts-some-child = un niño o una niña
acts-greeting-replaced = cambio del saludo
acts-greeting-removed = retirada del saludo
acts-children-added = { $count ->
    [one] { $count } apodo añadido
   *[other] { $count } apodos añadidos
  }
acts-child-archived = { $child }, al archivo
acts-child-moved = { $child }, a otra clase
acts-proposal = pasos del plan semanal
acts-plan-used = plan semanal aplicado
acts-book-changed = cambios en { $book }
acts-book-put-away = { $book } retirado
acts-draft = cambios del plan semanal descartados
acts-term-ended = trimestre terminado
acts-term-made = trimestre creado
acts-breaks-added = { $count ->
    [one] { $count } descanso añadido
   *[other] { $count } descansos añadidos
  }
acts-break-removed = descanso { $title } quitado
acts-class-archived = clase archivada
acts-teacher-removed = codocente, fuera de la clase
acts-term-week = semana { $week } del trimestre quitada
acts-pages = { $count ->
    [one] página de { $count } niño o niña en { $book }
   *[other] página de { $count } niñas y niños en { $book }
  }
acts-page = página de { $child } en { $book }

acts-none = No hay nada que deshacer. Lo que cambie se puede deshacer durante un día.
acts-title = Lo que se puede deshacer
acts-tap = Toque lo que deba quedar como estaba. Cada cosa se puede deshacer durante un día.
acts-on-page = Página { $page } de { $pages }
acts-again = Eso ya se deshizo.
acts-taken-back = Deshecho: { $act }.
acts-for-teachers = /undo es para docentes. Para corregir una marca, toque «{ $fix }» debajo del resultado; /today muestra la práctica de hoy.
