# Not checked by a native speaker.

turns-next = Weiter: { $child }
turns-after = { $child } ist nach { $first } an der Reihe.
turns-now = Jetzt ist { $child } an der Reihe.
turns-begun = Für { $child } gibt es schon eine eigene Nachricht. Mit /today kommt sie noch einmal.
turns-over = { $child } ist für heute fertig.
turns-about = { $child }: { $text }
