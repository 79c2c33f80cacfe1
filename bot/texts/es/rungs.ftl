# Not checked by a native speaker.

rungs-words-to20 = nombres de los números hasta 20
rungs-words-tens = nombres de las decenas hasta 100
rungs-words-to100 = nombres de los números hasta 100
rungs-words-to200 = nombres de los números hasta 200

rungs-bonds-within5 = sumas hasta 5
rungs-bonds-to10 = sumas hasta 10
rungs-bonds-make10 = lo que falta para 10
rungs-bonds-ties = sumas de dobles y casi dobles hasta 20
rungs-bonds-bridging = sumas pasando por 10
rungs-bonds-make20 = lo que falta para 20
rungs-bonds-to20 = sumas hasta 20
rungs-bonds-anygap10 = sumas hasta 10 con un hueco
rungs-bonds-anygap20 = sumas hasta 20 con un hueco

rungs-takeaway-within5 = restas hasta 5
rungs-takeaway-to10 = restas hasta 10
rungs-takeaway-teens = restas del 11 al 19 sin pasar por 10
rungs-takeaway-bridging = restas pasando por 10
rungs-takeaway-to20 = restas hasta 20
rungs-takeaway-anygap10 = restas hasta 10 con un hueco
rungs-takeaway-anygap20 = restas hasta 20 con un hueco

rungs-doubles-to5 = dobles hasta 5 + 5
rungs-doubles-to10 = dobles hasta 10 + 10
rungs-doubles-to20 = dobles hasta 20 + 20
rungs-doubles-tens = dobles de decenas hasta 100

rungs-halves-to10 = mitades de números pares hasta 10
rungs-halves-to20 = mitades de números pares hasta 20
rungs-halves-to40 = mitades de números pares hasta 40
rungs-halves-tens = mitades de decenas hasta 100

rungs-clock-oclock = reloj (en punto)
rungs-clock-half = reloj (y media)
rungs-clock-mixed = reloj (en punto, y media)
rungs-clock-quarterpast = reloj (y cuarto)
rungs-clock-quarterto = reloj (menos cuarto)
rungs-clock-quarters = reloj (cuartos de hora)
rungs-clock-fivepast = reloj (de 5 en 5, primera media hora)
rungs-clock-fiveto = reloj (de 5 en 5, segunda media hora)
rungs-clock-all = reloj (cada cinco minutos)

rungs-counting-onesback20 = contar hacia atrás de 1 en 1 entre 0 y 20
rungs-counting-ones100 = contar de 1 en 1 hasta 100
rungs-counting-onesback100 = contar hacia atrás de 1 en 1 entre 0 y 100
rungs-counting-tens100 = contar de 10 en 10 hasta 100
rungs-counting-tensback100 = contar hacia atrás de 10 en 10 entre 0 y 100
rungs-counting-tensoff100 = contar de 10 en 10 (13, 23, 33) hasta 100
rungs-counting-tensoffback100 = contar hacia atrás de 10 en 10 (33, 23, 13) entre 0 y 100
rungs-counting-fives100 = contar de 5 en 5 hasta 100
rungs-counting-fivesback100 = contar hacia atrás de 5 en 5 entre 0 y 100
rungs-counting-twos100 = contar de 2 en 2 hasta 100
rungs-counting-twosback100 = contar hacia atrás de 2 en 2 entre 0 y 100
rungs-counting-threes100 = contar de 3 en 3 hasta 100
rungs-counting-threesback100 = contar hacia atrás de 3 en 3 entre 0 y 100
rungs-counting-fours100 = contar de 4 en 4 hasta 100
rungs-counting-foursback100 = contar hacia atrás de 4 en 4 entre 0 y 100
rungs-counting-ones = contar de 1 en 1 hasta 200
rungs-counting-onesback = contar hacia atrás de 1 en 1 entre 0 y 200
rungs-counting-onesacross = contar de 1 en 1 pasando centenas hasta 200
rungs-counting-onesbackacross = contar hacia atrás de 1 en 1 pasando centenas entre 0 y 200
rungs-counting-tens = contar de 10 en 10 hasta 200
rungs-counting-tensback = contar hacia atrás de 10 en 10 entre 0 y 200
rungs-counting-tensoff = contar de 10 en 10 (13, 23, 33) hasta 200
rungs-counting-tensoffback = contar hacia atrás de 10 en 10 (33, 23, 13) entre 0 y 200
rungs-counting-fives = contar de 5 en 5 hasta 200
rungs-counting-fivesback = contar hacia atrás de 5 en 5 entre 0 y 200
rungs-counting-twos = contar de 2 en 2 hasta 200
rungs-counting-twosback = contar hacia atrás de 2 en 2 entre 0 y 200
rungs-counting-threes = contar de 3 en 3 hasta 200
rungs-counting-threesback = contar hacia atrás de 3 en 3 entre 0 y 200
rungs-counting-fours = contar de 4 en 4 hasta 200
rungs-counting-foursback = contar hacia atrás de 4 en 4 entre 0 y 200
rungs-counting-ones1000 = contar de 1 en 1 hasta 1000
rungs-counting-onesback1000 = contar hacia atrás de 1 en 1 entre 0 y 1000
rungs-counting-onesacross1000 = contar de 1 en 1 pasando centenas hasta 1000
rungs-counting-onesbackacross1000 = contar hacia atrás de 1 en 1 pasando centenas entre 0 y 1000
rungs-counting-tens1000 = contar de 10 en 10 hasta 1000
rungs-counting-tensback1000 = contar hacia atrás de 10 en 10 entre 0 y 1000
rungs-counting-tensoff1000 = contar de 10 en 10 (13, 23, 33) hasta 1000
rungs-counting-tensoffback1000 = contar hacia atrás de 10 en 10 (33, 23, 13) entre 0 y 1000
rungs-counting-fives1000 = contar de 5 en 5 hasta 1000
rungs-counting-fivesback1000 = contar hacia atrás de 5 en 5 entre 0 y 1000
rungs-counting-twos1000 = contar de 2 en 2 hasta 1000
rungs-counting-twosback1000 = contar hacia atrás de 2 en 2 entre 0 y 1000
rungs-counting-threes1000 = contar de 3 en 3 hasta 1000
rungs-counting-threesback1000 = contar hacia atrás de 3 en 3 entre 0 y 1000
rungs-counting-fours1000 = contar de 4 en 4 hasta 1000
rungs-counting-foursback1000 = contar hacia atrás de 4 en 4 entre 0 y 1000

rungs-times-twos = tabla del 2
rungs-times-tens = tabla del 10
rungs-times-fives = tabla del 5
rungs-times-mixed = tablas del 2, del 5 y del 10
