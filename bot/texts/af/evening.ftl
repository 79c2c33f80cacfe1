# Not checked by a native speaker.
evening-heading = { $child } · { $day }
evening-offer = Omtrent { $minutes }: { $parts }.
evening-then-pages = Daarna { $pages }.
evening-nudge = Daar is vanaand nog tyd vir ’n paar minute, as dit pas.
evening-reminder = Hier is die herinnering wat u gevra het. Begin gerus wanneer dit pas.
evening-later-at = Een herinnering kom om { $time }, soos u gevra het.
evening-not-today = Nie vandag nie. Dis heeltemal reg so.

evening-part = Deel { $part } van { $of }: { $title }
evening-count = Tel hardop saam: begin by { $start }, altesaam { $length ->
    [one] { $length } getal
   *[other] { $length } getalle
  }. Stop by die eerste fout.
evening-say = Sê elke antwoord hardop, omtrent { $seconds } sekondes per kaart. Geen haas nie.
evening-say-untimed = Sê elke antwoord hardop, hoe lank dit ook al neem.
evening-read = Lees elke woord hardop en wys of skryf die getal, omtrent { $seconds } sekondes per kaart. Geen haas nie.
evening-read-untimed = Lees elke woord hardop en wys of skryf die getal, hoe lank dit ook al neem.

evening-tap-last = Tik op die laaste getal wat reg was.
evening-tap-missed = Tik op die kaarte wat gemis is (✗), dan op “{ $done }”. Nou: { $right } van { $asked }.
evening-ask-pages = { $pages }. Hoeveel bladsye is gedoen?

evening-part-result = { $part }: { $right } van { $asked }, { $compared }
evening-first-time = die eerste keer hiermee
evening-better = { $by } meer as die beste tot nou toe
evening-same = net soos die beste tot nou toe
evening-below = beste tot nou toe { $best }
evening-own-only = Net met hierdie kind se eie aande vergelyk.
evening-thanks = Dankie. Dit was oefentyd goed bestee.

evening-elsewhere-done = Klaar geoefen saam met ’n ander helper.
evening-elsewhere-now = ’n Ander helper is nou besig om dit te merk.
evening-closed = Hierdie dag is verby en sy oefening is gesluit. Stuur /today vir vandag s’n.
evening-what-to-change = Wat wil u verander? Wat vroeër gemerk is, bly daarnaas bewaar.
evening-other-message = Gaan aan in die ander boodskap oor hierdie aand.
