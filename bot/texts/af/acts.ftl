# Not checked by a native speaker.
acts-some-child = ’n kind
acts-greeting-replaced = groet vervang
acts-greeting-removed = groet verwyder
acts-children-added = { $count ->
    [one] { $count } kind bygevoeg
   *[other] { $count } kinders bygevoeg
  }
acts-child-archived = { $child } geargiveer
acts-child-moved = { $child } na ’n ander klas
acts-proposal = stappe van die weekplan
acts-plan-used = weekplan in gebruik geneem
acts-book-changed = { $book } verander
acts-book-put-away = { $book } weggesit
acts-draft = veranderinge aan die weekplan weggegooi
acts-term-ended = kwartaal beëindig
acts-term-made = kwartaal beplan
acts-breaks-added = { $count ->
    [one] { $count } vakansie bygevoeg
   *[other] { $count } vakansies bygevoeg
  }
acts-break-removed = vakansie { $title } verwyder
acts-class-archived = klas geargiveer
acts-teacher-removed = mede-onderwyser verwyder
acts-term-week = week { $week } uit die kwartaal gehaal
acts-pages = { $count ->
    [one] bladsy van { $count } kind in { $book }
   *[other] bladsy van { $count } kinders in { $book }
  }
acts-page = { $child } se bladsy in { $book }

acts-none = Daar is niks om terug te neem nie. Wat u verander, kan een dag lank teruggeneem word.
acts-title = Wat teruggeneem kan word
acts-tap = Tik op wat weer moet wees soos dit was. Elkeen kan nog ’n dag lank teruggeneem word.
acts-on-page = Bladsy { $page } van { $pages }
acts-again = Dit is reeds teruggeneem.
acts-taken-back = Teruggeneem: { $act }.
acts-for-teachers = /undo is vir onderwysers. Om ’n merk te verander, tik op “{ $fix }” onder die uitslag; /today wys vandag se oefening.
