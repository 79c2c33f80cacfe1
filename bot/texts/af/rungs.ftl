# Not checked by a native speaker.

rungs-words-to20 = getalname tot 20
rungs-words-tens = getalname van die tiene tot 100
rungs-words-to100 = getalname tot 100
rungs-words-to200 = getalname tot 200

rungs-bonds-within5 = optel tot 5
rungs-bonds-to10 = optel tot 10
rungs-bonds-make10 = wat maak 10
rungs-bonds-ties = dubbels en byna-dubbels tot 20
rungs-bonds-bridging = optel oor die 10
rungs-bonds-make20 = wat maak 20
rungs-bonds-to20 = optel tot 20
rungs-bonds-anygap10 = optel tot 10 met ’n ontbrekende getal
rungs-bonds-anygap20 = optel tot 20 met ’n ontbrekende getal

rungs-takeaway-within5 = aftrek tot 5
rungs-takeaway-to10 = aftrek tot 10
rungs-takeaway-teens = aftrek van 11 tot 19, nie oor die 10 nie
rungs-takeaway-bridging = aftrek oor die 10
rungs-takeaway-to20 = aftrek tot 20
rungs-takeaway-anygap10 = aftrek tot 10 met ’n ontbrekende getal
rungs-takeaway-anygap20 = aftrek tot 20 met ’n ontbrekende getal

rungs-doubles-to5 = dubbels tot 5 + 5
rungs-doubles-to10 = dubbels tot 10 + 10
rungs-doubles-to20 = dubbels tot 20 + 20
rungs-doubles-tens = dubbels van tiene tot 100

rungs-halves-to10 = helftes van ewe getalle tot 10
rungs-halves-to20 = helftes van ewe getalle tot 20
rungs-halves-to40 = helftes van ewe getalle tot 40
rungs-halves-tens = helftes van tiene tot 100

rungs-clock-oclock = horlosie (volle ure)
rungs-clock-half = horlosie (halfure)
rungs-clock-mixed = horlosie (volle ure en halfure)
rungs-clock-quarterpast = horlosie (kwart oor)
rungs-clock-quarterto = horlosie (kwart voor)
rungs-clock-quarters = horlosie (kwartiere)
rungs-clock-fivepast = horlosie (vyf minute, eerste halfuur)
rungs-clock-fiveto = horlosie (vyf minute, tweede halfuur)
rungs-clock-all = horlosie (elke vyf minute)

rungs-counting-onesback20 = tel terug in ene binne 20
rungs-counting-ones100 = tel in ene tot 100
rungs-counting-onesback100 = tel terug in ene binne 100
rungs-counting-tens100 = tel in tiene tot 100
rungs-counting-tensback100 = tel terug in tiene binne 100
rungs-counting-tensoff100 = tel in tiene (13, 23, 33) tot 100
rungs-counting-tensoffback100 = tel terug in tiene (33, 23, 13) binne 100
rungs-counting-fives100 = tel in vywe tot 100
rungs-counting-fivesback100 = tel terug in vywe binne 100
rungs-counting-twos100 = tel in twees tot 100
rungs-counting-twosback100 = tel terug in twees binne 100
rungs-counting-threes100 = tel in drieë tot 100
rungs-counting-threesback100 = tel terug in drieë binne 100
rungs-counting-fours100 = tel in viere tot 100
rungs-counting-foursback100 = tel terug in viere binne 100
rungs-counting-ones = tel in ene tot 200
rungs-counting-onesback = tel terug in ene binne 200
rungs-counting-onesacross = tel in ene oor honderdtalle tot 200
rungs-counting-onesbackacross = tel terug in ene oor honderdtalle binne 200
rungs-counting-tens = tel in tiene tot 200
rungs-counting-tensback = tel terug in tiene binne 200
rungs-counting-tensoff = tel in tiene (13, 23, 33) tot 200
rungs-counting-tensoffback = tel terug in tiene (33, 23, 13) binne 200
rungs-counting-fives = tel in vywe tot 200
rungs-counting-fivesback = tel terug in vywe binne 200
rungs-counting-twos = tel in twees tot 200
rungs-counting-twosback = tel terug in twees binne 200
rungs-counting-threes = tel in drieë tot 200
rungs-counting-threesback = tel terug in drieë binne 200
rungs-counting-fours = tel in viere tot 200
rungs-counting-foursback = tel terug in viere binne 200
rungs-counting-ones1000 = tel in ene tot 1000
rungs-counting-onesback1000 = tel terug in ene binne 1000
rungs-counting-onesacross1000 = tel in ene oor honderdtalle tot 1000
rungs-counting-onesbackacross1000 = tel terug in ene oor honderdtalle binne 1000
rungs-counting-tens1000 = tel in tiene tot 1000
rungs-counting-tensback1000 = tel terug in tiene binne 1000
rungs-counting-tensoff1000 = tel in tiene (13, 23, 33) tot 1000
rungs-counting-tensoffback1000 = tel terug in tiene (33, 23, 13) binne 1000
rungs-counting-fives1000 = tel in vywe tot 1000
rungs-counting-fivesback1000 = tel terug in vywe binne 1000
rungs-counting-twos1000 = tel in twees tot 1000
rungs-counting-twosback1000 = tel terug in twees binne 1000
rungs-counting-threes1000 = tel in drieë tot 1000
rungs-counting-threesback1000 = tel terug in drieë binne 1000
rungs-counting-fours1000 = tel in viere tot 1000
rungs-counting-foursback1000 = tel terug in viere binne 1000

rungs-times-twos = tafel van twee
rungs-times-tens = tafel van tien
rungs-times-fives = tafel van vyf
rungs-times-mixed = tafels van twee, vyf en tien
