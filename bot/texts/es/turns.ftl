# Not checked by a native speaker.

turns-next = Ahora: { $child }
turns-after = El turno de { $child } es después del de { $first }.
turns-now = Ahora es el turno de { $child }.
turns-begun = La práctica de { $child } ya tiene su propio mensaje. Con /today se ve de nuevo.
turns-over = Por hoy, { $child } ya ha terminado.
turns-about = { $child }: { $text }
