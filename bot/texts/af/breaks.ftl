# Not checked by a native speaker.
breaks-how = Stuur die dae en ’n naam. Byvoorbeeld: 12 Okt. tot 16 Okt. Herfsvakansie
breaks-one-day = Een dag is ook genoeg: 4 Sept. Sportdag
breaks-untitled = Vakansie

breaks-list = { $class }: vakansies
breaks-list-page = { $class }: vakansies, bladsy { $page } van { $pages }
breaks-line = { $title }: { $days }
breaks-none = Geen wat voorlê nie. Op ’n vakansie se dae gaan niks uit nie.
breaks-tap-to-remove = Tik op ’n vakansie om dit te verwyder.
breaks-button = ✗ { $title }, { $day }

breaks-added = { $title }: { $days } { $year }
breaks-no-school-day = Daar is geen skooldag van hierdie klas in nie, so dit verander niks.
breaks-one-school-day = Een skooldag, ’n { $weekday }. Niks gaan daarop uit nie.
breaks-school-days = { $days } skooldae, { $weekdays }. Niks gaan daarop uit nie.
breaks-over = Dit is al verby: net die weekoorsig en verslae tel dit.
breaks-today-stays = ’n Oefening wat vandag reeds uitgegaan het, bly.
breaks-there-already = Dit was reeds daar; niks is bygevoeg nie.
breaks-removed = { $title } is verwyder.

breaks-bad-shape = Ek kon { $typed } nie as een vakansie lees nie.
breaks-bad-date = { $typed } is nie ’n datum op die kalender nie.
breaks-bad-slash = { $typed } kan twee datums wees. Skryf asseblief die maand as ’n woord, soos 3 April.
breaks-bad-order = { $typed }: die laaste dag kom voor die eerste.
breaks-bad-long = { $days } dae is te lank vir ’n vakansie, hoogstens { $most }.
breaks-bad-weekday = { $date } { $year } is ’n { $weekday }. Stuur die vakansie asseblief weer met die regte dag.
breaks-date = { $day } { $month }
breaks-date-year = { $day } { $month } { $year }

breaks-holidays = { $class }: openbare vakansiedae
breaks-holidays-of = { $place }, die volgende twaalf maande, net skooldae.
breaks-holidays-none = Geen wat nie reeds by u vakansies is nie.
breaks-holidays-ticked = { $chosen } van { $of } gemerk. Tik op een om dit uit te laat, of om dit weer in te neem.
breaks-holidays-compare = Vergelyk asseblief met u skool se eie kalender: dae kan op kort kennisgewing by wet verskuif word.
breaks-holidays-page = Bladsy { $page } van { $pages }
breaks-holidays-add = { $chosen ->
    [one] Voeg hierdie een by
   *[other] Voeg hierdie { $chosen } by
  }
breaks-holidays-there = Hulle was reeds daar; niks is bygevoeg nie.
breaks-holidays-added = { $added ->
    [one] { $added } vakansiedag bygevoeg.
   *[other] { $added } vakansiedae bygevoeg.
  }
breaks-whose-holidays = Wie se openbare vakansiedae?
breaks-which-region = { $country }: watter streek?
breaks-choose-country = Kies die land van die skool.
breaks-some-in-region = Sommige vakansiedae geld net in een streek.
breaks-places-page = Bladsy { $page } van { $pages }, in alfabetiese volgorde.
