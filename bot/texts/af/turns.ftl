# Not checked by a native speaker.

turns-next = Volgende: { $child }
turns-after = { $child } se beurt is ná { $first } s’n.
turns-now = Nou is dit { $child } se beurt.
turns-begun = { $child } se oefening het reeds sy eie boodskap. Stuur /today om dit weer te sien.
turns-over = { $child } is klaar vir vandag.
turns-about = { $child }: { $text }
