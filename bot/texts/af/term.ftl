# Not checked by a native speaker.

term-weeks =
  { $count ->
    [one] { $count } week
   *[other] { $count } weke
  }
term-title = { $class }: die kwartaal, { $weeks }
term-begins = Dit begin op { $day }.
term-no-days = Geen skooldae voorlê nie.
term-over = Dit is verby; die laaste plan bly in gebruik.
term-next = Die volgende aand val in week { $week }.
term-by-itself = Elkeen gaan vanself uit, tensy u vir daardie week ’n ander plan in gebruik neem.

term-as-before = soos tevore
term-new = nuut: { $steps }
term-new-more = nuut: { $steps } en nog { $count }

term-week = Week { $week } van { $of }
term-week-from = Week { $week } van { $of }, vanaf { $day }
term-week-now = Die volgende aand val in hierdie week: ’n verandering geld van dan af.
term-week-over = Hierdie week is verby.

term-new-title = { $class }: ’n nuwe kwartaal
term-from-steps =
  { $count ->
    [one] Uit die stappe wat gewoon is in { $grade }: { $count } stap altesaam, makliker eerste.
   *[other] Uit die stappe wat gewoon is in { $grade }: { $count } stappe altesaam, makliker eerste.
  }
term-ask = Hoeveel weke, watter van die jaar se stappe, en van wanneer af?
term-passed-over = Weke sonder skool word oorgeslaan. Elke week kan later verander word.
term-needs-grade = ’n Kwartaal word gemaak uit die stappe wat in ’n graad gewoon is. Kies eers die kurrikulum en die graad.

term-share-all = Die hele jaar
term-share-first = Eerste derde
term-share-second = Tweede derde
term-share-last = Laaste derde
term-make = Maak dit, vanaf { $day }
term-week-button = Week { $week }

term-moved-on = Die kwartaal het intussen verander. Hierdie tik het niks verander nie.
