# Not checked by a native speaker.
adjusted-shorter = Für { $child } ausgesucht: heute ein wenig kürzer.
adjusted-picked = Für { $child } ausgesucht.
adjusted-untimed = Ohne Zeitvorgabe: so lange es eben dauert.
