# Not checked by a native speaker.
set-up-zone = In watter tydsone is die gesinne? Tik op die horlosie wat reg is, of stuur ’n stad soos Nairobi of Europe/London.
set-up-zones = Daar is meer as een. Watter een?
set-up-first-plan = { $class }: die eerste plan
set-up-grade = { $curriculum }. Watter graad?
set-up-curriculum = Watter kurrikulum is die naaste aan u s’n?
set-up-suggest = Ek stel vyf stappe voor wat in hierdie tyd van die skooljaar gewoon is. U kyk dit deur voordat enigiets uitgaan.
set-up-no-steps = Vir daardie graad word geen stappe genoem nie. Maak die weekplan oop en kies self die dele.
set-up-cancelled = Gelaat soos dit was.
set-up-nothing-asked = Niks wag meer op ’n antwoord nie.
set-up-gone-on = Daardie klas is al gemaak, of dit is laat vaar. Stuur /class om te sien waar u is.
