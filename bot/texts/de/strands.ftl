# Not checked by a native speaker.

strands-words = Zahlwörter
strands-bonds = Plusaufgaben
strands-takeaway = Minusaufgaben
strands-doubles = Verdoppeln
strands-halves = Halbieren
strands-clock = Uhrzeit
strands-counting = Zählen
strands-times = Einmaleins

strands-short-words = Zahlwörter
strands-short-bonds = Plus
strands-short-takeaway = Minus
strands-short-doubles = Verdoppeln
strands-short-halves = Halbieren
strands-short-clock = Uhrzeit
strands-short-counting = Zählen
strands-short-times = Einmaleins
