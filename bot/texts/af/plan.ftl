# Not checked by a native speaker.

plan-cards =
  { $count ->
    [one] { $count } kaart
   *[other] { $count } kaarte
  }
plan-numbers =
  { $count ->
    [one] { $count } getal
   *[other] { $count } getalle
  }

plan-size = { $amount }, { $seconds } s elk
plan-line = { $part }: { $size }

plan-and-more = { $step } en nog { $count }

plan-usual-size = Gewone grootte: { $size }.
plan-shuffled = Die kaarte kom geskommel, omtrent ewe veel van elk.
plan-step-usual = { $step }, gewoon in { $grade }
plan-step-not-usual = { $step }, nie as gewoon in { $grade } gemerk nie

plan-statement = { $grade }: { $statement }.
plan-source = In ons eie woorde (Engels); { $source }.
plan-doubt-secondary = net in ’n opsomming gelees
plan-doubt-memory = uit die geheue, gaan dit asseblief na
plan-not-usual = Nie as gewoon in { $grade } gemerk nie.
plan-usual-elsewhere = Nie as gewoon in { $grade } gemerk nie, maar wel in { $others }.
plan-no-source = Geen gepubliseerde bron nie: algemene gebruik.
plan-asked-for = Word gevra, in ons eie woorde (Engels):
plan-other-places =
  { $count ->
    [one] en nog { $count } plek
   *[other] en nog { $count } plekke
  }

plan-already-there = Deel { $part } oefen dit reeds. Kies iets anders.
plan-no-room-apart = Apart is dit { $parts } dele, en { $max } is die meeste. Haal eers ’n ander deel weg.
plan-none-last = Geen plan was verlede week in gebruik nie.
plan-none-digest = Die weekoorsig stel nog geen verandering aan hierdie plan voor nie.
plan-none-term = Die kwartaal het geen plan vir die volgende aand nie.
plan-none-same = Dit is reeds die plan wat in gebruik is.
plan-put-in-use = In gebruik vanaf die volgende aand. Oefeninge wat reeds gestuur is, bly soos hulle is.

plan-problem-empty = Die plan moet minstens een deel hê. Voeg eers een by.
plan-problem-parts = { $value } dele is te veel: hoogstens { $max }. Haal een weg.
plan-problem-cards = Deel { $part }: { $value } kaarte pas nie; dit kan van { $min } tot { $max } wees.
plan-problem-seconds = Deel { $part }: { $value } sekondes pas nie; dit kan van { $min } tot { $max } wees.
plan-problem-twice = Deel { $part } oefen dieselfde as ’n ander deel. Kies iets anders.
plan-problem-mixed = Deel { $part } meng { $value } stappe; hoogstens { $max } pas. Haal een uit.
plan-problem-unlike = Deel { $part }: hierdie stappe vra verskillende dinge en kan nie saam geskommel word nie. Hou hulle apart.
plan-problem-unknown = Deel { $part } oefen iets wat hierdie weergawe nie ken nie. Kies weer.
