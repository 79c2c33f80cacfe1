# Not checked by a native speaker.

strands-words = getalname
strands-bonds = optelfeite
strands-takeaway = aftrek
strands-doubles = dubbels
strands-halves = helftes
strands-clock = horlosie
strands-counting = tel
strands-times = maaltafels

strands-short-words = getalname
strands-short-bonds = optel
strands-short-takeaway = aftrek
strands-short-doubles = dubbels
strands-short-halves = helftes
strands-short-clock = horlosie
strands-short-counting = tel
strands-short-times = tafels
