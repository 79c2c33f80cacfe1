# Not checked by a native speaker.
child-page-none = Nog geen aand om van te vertel nie.
child-page-practised = { $days ->
    [one] Sedert { $first } op { $practised } van { $days } skooldag geoefen.
   *[other] Sedert { $first } op { $practised } van { $days } skooldae geoefen.
  }
child-page-week = Afgelope sewe dae: { $said }.
child-page-week-practised = geoefen { $days }
child-page-week-not_today = “nie vandag nie” { $days }
child-page-week-silent = geen antwoord { $days }
child-page-week-unsent = nie afgelewer nie { $days }

child-page-sure = Seker van: { $steps }.
child-page-meeting = Leer nog ken: { $facts }.
child-page-right = Reg in daardie tyd: { $told }.
child-page-tally = { $strand } { $right } van { $asked }
child-page-caution = Die helper se merke, net met hierdie kind se eie verlede vergelyk. Geen toets en geen diagnose nie.

child-page-family-none = Gesin: nog niemand het aangesluit nie.
child-page-family-left = Gesin: die helper is weg.
child-page-family-unheard = { $helpers ->
    [one] Gesin: { $helpers } helper, nog niks gehoor nie.
   *[other] Gesin: { $helpers } helpers, nog niks gehoor nie.
  }
child-page-family-heard = { $helpers ->
    [one] Gesin: { $helpers } helper, laas iets gehoor op { $day }.
   *[other] Gesin: { $helpers } helpers, laas iets gehoor op { $day }.
  }
child-page-family-unreached-unheard = { $helpers ->
    [one] Gesin: { $helpers } helper, boodskappe kom nie meer aan nie, nog niks gehoor nie.
   *[other] Gesin: { $helpers } helpers, boodskappe kom nie meer aan nie, nog niks gehoor nie.
  }
child-page-family-unreached-heard = { $helpers ->
    [one] Gesin: { $helpers } helper, boodskappe kom nie meer aan nie, laas iets gehoor op { $day }.
   *[other] Gesin: { $helpers } helpers, boodskappe kom nie meer aan nie, laas iets gehoor op { $day }.
  }

child-page-say = { $child }: om saam hardop te sê
child-page-say-how = Die mins seker eerste. Een minuut is genoeg: sê dit, sê dit weer, gaan voort.
child-page-say-none = Nog niks is gemerk nie.

child-page-books-done = Werkboek: alles klaar.
child-page-book = Werkboek: { $book }, by bladsy { $page } van { $last }.
