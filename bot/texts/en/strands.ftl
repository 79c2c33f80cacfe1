# The kinds of practice: over lists of steps, in digests and over the columns of pictures, where there is little room.
# They also stand inside sentences and lists.

strands-words = number words
strands-bonds = number bonds
strands-takeaway = take away
strands-doubles = doubles
strands-halves = halves
strands-clock = clock
strands-counting = counting
strands-times = times tables

# The same over narrow columns: words of ten letters at most.
strands-short-words = number words
strands-short-bonds = number bonds
strands-short-takeaway = take away
strands-short-doubles = doubles
strands-short-halves = halves
strands-short-clock = clock
strands-short-counting = counting
strands-short-times = times tables
