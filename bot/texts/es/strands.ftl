# Not checked by a native speaker.

strands-words = nombres de los números
strands-bonds = sumas básicas
strands-takeaway = restas
strands-doubles = dobles
strands-halves = mitades
strands-clock = reloj
strands-counting = contar
strands-times = tablas de multiplicar

strands-short-words = números en letras
strands-short-bonds = sumas
strands-short-takeaway = restas
strands-short-doubles = dobles
strands-short-halves = mitades
strands-short-clock = reloj
strands-short-counting = contar
strands-short-times = tablas
