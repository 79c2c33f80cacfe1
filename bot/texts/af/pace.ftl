# Not checked by a native speaker.
pace-pause-title = ’n Pouse vir { $children }?
pace-pause-how = Niks kom tot die dag wat gekies word nie, na geen helper nie. Dan gaan dit vanself aan, en niks hoef ingehaal te word nie.
pace-paused-title = ’n Pouse vir { $children }
pace-paused-line = { $child }: die oefening kom weer op { $day }.
pace-running-line = { $child }: geen pouse nie.
pace-more = { $count ->
    [one] En nog een kind.
   *[other] En nog { $count } kinders.
  }
pace-paused-until = Niks kom tot { $day } nie.
pace-started-again = Die oefening kom weer, vanaf die volgende aand.
pace-ask-day = Op watter dag moet die oefening weer kom? Stuur dit so: 12 Oktober
pace-bad-shape = Ek kon nie { $typed } as ’n dag lees nie. Stuur dit so: 12 Oktober
pace-bad-date = { $typed } is nie ’n datum op die kalender nie. Stuur dit so: 12 Oktober
pace-bad-slash = { $typed } kan twee datums wees. Skryf asseblief die maand as ’n woord, soos 12 Oktober.
pace-bad-weekday = { $day } is ’n { $weekday }. Stuur asseblief die dag weer.
pace-bad-past = { $day } is reeds verby. Stuur ’n dag van { $first } tot { $last }.
pace-bad-far = { $day } is te ver weg: ’n pouse duur hoogstens { $most } dae. Stuur ’n dag van { $first } tot { $last }.
pace-days-title = Op watter dae moet die oefening kom?
pace-days-line = { $child }: { $days }
pace-days-three = { $child }: nou drie aande per week, omdat niemand ’n rukkie geantwoord het nie
pace-days-one = { $child }: nou een aand per week, omdat niemand ’n rukkie geantwoord het nie
pace-days-paused = { $child }: ’n pouse tot { $day }
pace-days-how = Tik op ’n dag om dit by te voeg of weg te laat. Vanaf die volgende aand, vir elke helper van die kind.
pace-days-last = Een dag moet bly. Vir ’n rus is daar /pause.
pace-every-day = Elke skooldag, vanaf die volgende aand.
pace-fewer-three = Ons stuur die oefening nou op drie aande per week. Tik om dit elke skooldag te kry.
pace-fewer-one = Ons stuur die oefening nou op een aand per week. Tik om dit elke skooldag te kry.
pace-today-paused = { $child }: ’n pouse tot { $day }. /pause beëindig dit.
pace-held = hoe gereeld die oefening kom
pace-held-daily = elke skooldag
pace-held-three = drie aande per week
pace-held-one = een aand per week
pace-held-announced = minder aande vanaf { $day }
pace-held-kept = deur die onderwyser so gehou
pace-held-paused = pouse tot { $day }
pace-held-days = net op { $days }
