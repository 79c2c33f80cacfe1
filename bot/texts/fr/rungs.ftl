# Not checked by a native speaker.

rungs-words-to20 = nombres en lettres jusqu’à 20
rungs-words-tens = dizaines en lettres jusqu’à 100
rungs-words-to100 = nombres en lettres jusqu’à 100
rungs-words-to200 = nombres en lettres jusqu’à 200

rungs-bonds-within5 = additions jusqu’à 5
rungs-bonds-to10 = additions jusqu’à 10
rungs-bonds-make10 = compléments à 10
rungs-bonds-ties = doubles et presque-doubles jusqu’à 20
rungs-bonds-bridging = additions avec passage de la dizaine
rungs-bonds-make20 = compléments à 20
rungs-bonds-to20 = additions jusqu’à 20
rungs-bonds-anygap10 = additions à trou jusqu’à 10
rungs-bonds-anygap20 = additions à trou jusqu’à 20

rungs-takeaway-within5 = soustractions jusqu’à 5
rungs-takeaway-to10 = soustractions jusqu’à 10
rungs-takeaway-teens = soustractions de 11 à 19 sans passer la dizaine
rungs-takeaway-bridging = soustractions avec passage de la dizaine
rungs-takeaway-to20 = soustractions jusqu’à 20
rungs-takeaway-anygap10 = soustractions à trou jusqu’à 10
rungs-takeaway-anygap20 = soustractions à trou jusqu’à 20

rungs-doubles-to5 = doubles jusqu’à 5 + 5
rungs-doubles-to10 = doubles jusqu’à 10 + 10
rungs-doubles-to20 = doubles jusqu’à 20 + 20
rungs-doubles-tens = doubles de dizaines jusqu’à 100

rungs-halves-to10 = moitiés de nombres pairs jusqu’à 10
rungs-halves-to20 = moitiés de nombres pairs jusqu’à 20
rungs-halves-to40 = moitiés de nombres pairs jusqu’à 40
rungs-halves-tens = moitiés de dizaines jusqu’à 100

rungs-clock-oclock = heure (heures pile)
rungs-clock-half = heure (et demie)
rungs-clock-mixed = heure (heures pile, et demie)
rungs-clock-quarterpast = heure (et quart)
rungs-clock-quarterto = heure (moins le quart)
rungs-clock-quarters = heure (quarts d’heure)
rungs-clock-fivepast = heure (de 5 en 5, première demi-heure)
rungs-clock-fiveto = heure (de 5 en 5, seconde demi-heure)
rungs-clock-all = heure (toutes les cinq minutes)

rungs-counting-onesback20 = compter à rebours de 1 en 1 entre 0 et 20
rungs-counting-ones100 = compter de 1 en 1 jusqu’à 100
rungs-counting-onesback100 = compter à rebours de 1 en 1 entre 0 et 100
rungs-counting-tens100 = compter de 10 en 10 jusqu’à 100
rungs-counting-tensback100 = compter à rebours de 10 en 10 entre 0 et 100
rungs-counting-tensoff100 = compter de 10 en 10 (13, 23, 33) jusqu’à 100
rungs-counting-tensoffback100 = compter à rebours de 10 en 10 (33, 23, 13) entre 0 et 100
rungs-counting-fives100 = compter de 5 en 5 jusqu’à 100
rungs-counting-fivesback100 = compter à rebours de 5 en 5 entre 0 et 100
rungs-counting-twos100 = compter de 2 en 2 jusqu’à 100
rungs-counting-twosback100 = compter à rebours de 2 en 2 entre 0 et 100
rungs-counting-threes100 = compter de 3 en 3 jusqu’à 100
rungs-counting-threesback100 = compter à rebours de 3 en 3 entre 0 et 100
rungs-counting-fours100 = compter de 4 en 4 jusqu’à 100
rungs-counting-foursback100 = compter à rebours de 4 en 4 entre 0 et 100
rungs-counting-ones = compter de 1 en 1 jusqu’à 200
rungs-counting-onesback = compter à rebours de 1 en 1 entre 0 et 200
rungs-counting-onesacross = compter de 1 en 1 avec passage de centaine jusqu’à 200
rungs-counting-onesbackacross = compter à rebours de 1 en 1 avec passage de centaine entre 0 et 200
rungs-counting-tens = compter de 10 en 10 jusqu’à 200
rungs-counting-tensback = compter à rebours de 10 en 10 entre 0 et 200
rungs-counting-tensoff = compter de 10 en 10 (13, 23, 33) jusqu’à 200
rungs-counting-tensoffback = compter à rebours de 10 en 10 (33, 23, 13) entre 0 et 200
rungs-counting-fives = compter de 5 en 5 jusqu’à 200
rungs-counting-fivesback = compter à rebours de 5 en 5 entre 0 et 200
rungs-counting-twos = compter de 2 en 2 jusqu’à 200
rungs-counting-twosback = compter à rebours de 2 en 2 entre 0 et 200
rungs-counting-threes = compter de 3 en 3 jusqu’à 200
rungs-counting-threesback = compter à rebours de 3 en 3 entre 0 et 200
rungs-counting-fours = compter de 4 en 4 jusqu’à 200
rungs-counting-foursback = compter à rebours de 4 en 4 entre 0 et 200
rungs-counting-ones1000 = compter de 1 en 1 jusqu’à 1000
rungs-counting-onesback1000 = compter à rebours de 1 en 1 entre 0 et 1000
rungs-counting-onesacross1000 = compter de 1 en 1 avec passage de centaine jusqu’à 1000
rungs-counting-onesbackacross1000 = compter à rebours de 1 en 1 avec passage de centaine entre 0 et 1000
rungs-counting-tens1000 = compter de 10 en 10 jusqu’à 1000
rungs-counting-tensback1000 = compter à rebours de 10 en 10 entre 0 et 1000
rungs-counting-tensoff1000 = compter de 10 en 10 (13, 23, 33) jusqu’à 1000
rungs-counting-tensoffback1000 = compter à rebours de 10 en 10 (33, 23, 13) entre 0 et 1000
rungs-counting-fives1000 = compter de 5 en 5 jusqu’à 1000
rungs-counting-fivesback1000 = compter à rebours de 5 en 5 entre 0 et 1000
rungs-counting-twos1000 = compter de 2 en 2 jusqu’à 1000
rungs-counting-twosback1000 = compter à rebours de 2 en 2 entre 0 et 1000
rungs-counting-threes1000 = compter de 3 en 3 jusqu’à 1000
rungs-counting-threesback1000 = compter à rebours de 3 en 3 entre 0 et 1000
rungs-counting-fours1000 = compter de 4 en 4 jusqu’à 1000
rungs-counting-foursback1000 = compter à rebours de 4 en 4 entre 0 et 1000

rungs-times-twos = table de 2
rungs-times-tens = table de 10
rungs-times-fives = table de 5
rungs-times-mixed = tables de 2, de 5 et de 10
