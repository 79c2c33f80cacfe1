# Not checked by a native speaker.
teacher-welcome = Welkom. U is nou ’n onderwyser hier.
teacher-welcome-next = Maak nou u klas: dit neem omtrent drie minute. Met /newclass kan dit enige tyd.

teacher-ask-title = Wat is die klas se naam? Byvoorbeeld: Visvangerklas
teacher-ask-roster = Stuur die kinders se byname, een per reël, hoogstens { $most } karakters elk. Net byname, geen vanne nie. Of stuur die lys as ’n XLSX- of CSV-lêer.
teacher-ask-evening = Hoe laat moet die oefening uitgaan? Van { $from } tot { $to }, byvoorbeeld 17:30. ’n Gesin kan sy eie tyd kies.
teacher-ask-nudge = Hoe laat moet die een vriendelike herinnering uitgaan, as niemand gemerk het nie? Ten minste { $gap } minute ná die oefening, op die laatste { $latest }.
teacher-ask-digest = Hoe laat moet u weekoorsig kom? Byvoorbeeld 20:00. Ná die oefening se tyd sluit dit daardie aand ook in.

teacher-children = { $children ->
    [one] { $children } kind, { $joined } met ’n helper
   *[other] { $children } kinders, { $joined } met ’n helper
  }
teacher-week = { $weekdays } om { $evening }, herinnering om { $nudge } ({ $zone })
teacher-digest = Weekoorsig: { $weekday } om { $time }
teacher-book = Werkboek: { $book }, { $range }, { $pages } per dag
teacher-no-book = Werkboek: geen
teacher-no-plan = Nog geen weekplan nie: niks gaan uit nie.
teacher-no-class = U het nog geen klas nie. Maak een met /newclass.

teacher-times = { $class }: dae en tye
teacher-times-days = Skooldae: { $weekdays }
teacher-times-drill = Oefening om { $evening }, herinnering om { $nudge }
teacher-times-zone = Tydsone: { $zone }
teacher-times-tap = Tik op wat u wil verander.

teacher-bad-time = { $typed } is nie ’n tyd nie. Stuur ure en minute van 00:00 tot 23:59, soos 17:30.
teacher-bad-zone = Ek ken nie die tydsone { $typed } nie.
teacher-bad-zone-send = Stuur ’n stad waarna tydsones genoem word, soos Nairobi, of ’n sone soos Europe/London.
teacher-saved = Gestoor. ’n Oefentyd wat vandag al verby is, begin môre.
teacher-class-made = Die klas is daar.
teacher-class-made-next = Hierbo is die gewone dae en tye; verander wat nie pas nie. Volgende: die kinders, dan die weekplan.
