# Not checked by a native speaker.

pictures-start = begin
pictures-to-say = om te sê

pictures-start-at = Begin by { $number }.
pictures-count-on = Tel aan { $steps }.
pictures-count-back = Tel terug { $steps }.

pictures-score = { $right } van { $asked }
pictures-position = { $card } van { $of }
pictures-seconds =
  { $count ->
    [one] { $count } sekonde elk
   *[other] { $count } sekondes elk
  }
pictures-say-each = Sê elke antwoord hardop.
pictures-finished = Dit was die laaste kaart.
pictures-mark-together = Merk dit nou saam.
pictures-say-again = Sê weer by ontbyt

pictures-practised = geoefen
pictures-not-today = nie vandag nie
pictures-silent = geen antwoord
pictures-unsent = nie afgelewer nie
pictures-not-asked = nie gevra nie

pictures-secure = vas
pictures-growing = groei
pictures-not-yet = nog nie
pictures-too-few = te min

pictures-no-evening = Nog geen aand hierdie kwartaal nie
pictures-evenings =
  { $count ->
    [one] { $count } aand hierdie kwartaal
   *[other] { $count } aande hierdie kwartaal
  }
pictures-percent = { $hundredths }%
