# Not checked by a native speaker.

rungs-words-to20 = Zahlwörter bis 20
rungs-words-tens = Zahlwörter der Zehner bis 100
rungs-words-to100 = Zahlwörter bis 100
rungs-words-to200 = Zahlwörter bis 200

rungs-bonds-within5 = Plusaufgaben bis 5
rungs-bonds-to10 = Plusaufgaben bis 10
rungs-bonds-make10 = Ergänzen auf 10
rungs-bonds-ties = Plus mit (fast) gleichen Zahlen bis 20
rungs-bonds-bridging = Plusaufgaben mit Zehnerübergang
rungs-bonds-make20 = Ergänzen auf 20
rungs-bonds-to20 = Plusaufgaben bis 20
rungs-bonds-anygap10 = Plusaufgaben bis 10 mit Lücke
rungs-bonds-anygap20 = Plusaufgaben bis 20 mit Lücke

rungs-takeaway-within5 = Minusaufgaben bis 5
rungs-takeaway-to10 = Minusaufgaben bis 10
rungs-takeaway-teens = Minusaufgaben 11 bis 19 ohne Zehnerübergang
rungs-takeaway-bridging = Minusaufgaben mit Zehnerübergang
rungs-takeaway-to20 = Minusaufgaben bis 20
rungs-takeaway-anygap10 = Minusaufgaben bis 10 mit Lücke
rungs-takeaway-anygap20 = Minusaufgaben bis 20 mit Lücke

rungs-doubles-to5 = Verdoppeln bis 5 + 5
rungs-doubles-to10 = Verdoppeln bis 10 + 10
rungs-doubles-to20 = Verdoppeln bis 20 + 20
rungs-doubles-tens = Verdoppeln von Zehnern bis 100

rungs-halves-to10 = Halbieren gerader Zahlen bis 10
rungs-halves-to20 = Halbieren gerader Zahlen bis 20
rungs-halves-to40 = Halbieren gerader Zahlen bis 40
rungs-halves-tens = Halbieren von Zehnern bis 100

rungs-clock-oclock = Uhrzeit (volle Stunden)
rungs-clock-half = Uhrzeit (halbe Stunden)
rungs-clock-mixed = Uhrzeit (volle und halbe Stunden)
rungs-clock-quarterpast = Uhrzeit (Viertel nach)
rungs-clock-quarterto = Uhrzeit (Viertel vor)
rungs-clock-quarters = Uhrzeit (Viertelstunden)
rungs-clock-fivepast = Uhrzeit (5 Minuten, erste halbe Stunde)
rungs-clock-fiveto = Uhrzeit (5 Minuten, zweite halbe Stunde)
rungs-clock-all = Uhrzeit (alle fünf Minuten)

rungs-counting-onesback20 = Rückwärtszählen in 1er-Schritten zwischen 0 und 20
rungs-counting-ones100 = Zählen in 1er-Schritten bis 100
rungs-counting-onesback100 = Rückwärtszählen in 1er-Schritten zwischen 0 und 100
rungs-counting-tens100 = Zählen in 10er-Schritten bis 100
rungs-counting-tensback100 = Rückwärtszählen in 10er-Schritten zwischen 0 und 100
rungs-counting-tensoff100 = Zählen in 10er-Schritten (13, 23, 33) bis 100
rungs-counting-tensoffback100 = Rückwärtszählen in 10er-Schritten (33, 23, 13) zwischen 0 und 100
rungs-counting-fives100 = Zählen in 5er-Schritten bis 100
rungs-counting-fivesback100 = Rückwärtszählen in 5er-Schritten zwischen 0 und 100
rungs-counting-twos100 = Zählen in 2er-Schritten bis 100
rungs-counting-twosback100 = Rückwärtszählen in 2er-Schritten zwischen 0 und 100
rungs-counting-threes100 = Zählen in 3er-Schritten bis 100
rungs-counting-threesback100 = Rückwärtszählen in 3er-Schritten zwischen 0 und 100
rungs-counting-fours100 = Zählen in 4er-Schritten bis 100
rungs-counting-foursback100 = Rückwärtszählen in 4er-Schritten zwischen 0 und 100
rungs-counting-ones = Zählen in 1er-Schritten bis 200
rungs-counting-onesback = Rückwärtszählen in 1er-Schritten zwischen 0 und 200
rungs-counting-onesacross = Zählen in 1er-Schritten über Hunderter bis 200
rungs-counting-onesbackacross = Rückwärtszählen in 1er-Schritten über Hunderter zwischen 0 und 200
rungs-counting-tens = Zählen in 10er-Schritten bis 200
rungs-counting-tensback = Rückwärtszählen in 10er-Schritten zwischen 0 und 200
rungs-counting-tensoff = Zählen in 10er-Schritten (13, 23, 33) bis 200
rungs-counting-tensoffback = Rückwärtszählen in 10er-Schritten (33, 23, 13) zwischen 0 und 200
rungs-counting-fives = Zählen in 5er-Schritten bis 200
rungs-counting-fivesback = Rückwärtszählen in 5er-Schritten zwischen 0 und 200
rungs-counting-twos = Zählen in 2er-Schritten bis 200
rungs-counting-twosback = Rückwärtszählen in 2er-Schritten zwischen 0 und 200
rungs-counting-threes = Zählen in 3er-Schritten bis 200
rungs-counting-threesback = Rückwärtszählen in 3er-Schritten zwischen 0 und 200
rungs-counting-fours = Zählen in 4er-Schritten bis 200
rungs-counting-foursback = Rückwärtszählen in 4er-Schritten zwischen 0 und 200
rungs-counting-ones1000 = Zählen in 1er-Schritten bis 1000
rungs-counting-onesback1000 = Rückwärtszählen in 1er-Schritten zwischen 0 und 1000
rungs-counting-onesacross1000 = Zählen in 1er-Schritten über Hunderter bis 1000
rungs-counting-onesbackacross1000 = Rückwärtszählen in 1er-Schritten über Hunderter zwischen 0 und 1000
rungs-counting-tens1000 = Zählen in 10er-Schritten bis 1000
rungs-counting-tensback1000 = Rückwärtszählen in 10er-Schritten zwischen 0 und 1000
rungs-counting-tensoff1000 = Zählen in 10er-Schritten (13, 23, 33) bis 1000
rungs-counting-tensoffback1000 = Rückwärtszählen in 10er-Schritten (33, 23, 13) zwischen 0 und 1000
rungs-counting-fives1000 = Zählen in 5er-Schritten bis 1000
rungs-counting-fivesback1000 = Rückwärtszählen in 5er-Schritten zwischen 0 und 1000
rungs-counting-twos1000 = Zählen in 2er-Schritten bis 1000
rungs-counting-twosback1000 = Rückwärtszählen in 2er-Schritten zwischen 0 und 1000
rungs-counting-threes1000 = Zählen in 3er-Schritten bis 1000
rungs-counting-threesback1000 = Rückwärtszählen in 3er-Schritten zwischen 0 und 1000
rungs-counting-fours1000 = Zählen in 4er-Schritten bis 1000
rungs-counting-foursback1000 = Rückwärtszählen in 4er-Schritten zwischen 0 und 1000

rungs-times-twos = Einmaleins mit 2
rungs-times-tens = Einmaleins mit 10
rungs-times-fives = Einmaleins mit 5
rungs-times-mixed = Einmaleins mit 2, 5 und 10
