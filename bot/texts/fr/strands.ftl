# Not checked by a native speaker.

strands-words = nombres en lettres
strands-bonds = additions
strands-takeaway = soustractions
strands-doubles = doubles
strands-halves = moitiés
strands-clock = heure
strands-counting = compter
strands-times = tables de multiplication

strands-short-words = nombres en lettres
strands-short-bonds = plus
strands-short-takeaway = moins
strands-short-doubles = doubles
strands-short-halves = moitiés
strands-short-clock = heure
strands-short-counting = compter
strands-short-times = tables
