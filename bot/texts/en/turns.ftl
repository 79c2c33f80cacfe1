# A button; $child is a nickname.
turns-next = Next: { $child }
turns-after = { $child }’s turn is after { $first }’s.
turns-now = Now it is { $child }’s turn.
turns-begun = { $child }’s drill has a message of its own already. Send /today to see it again.
turns-over = { $child } is done for today.
# An answer to a tap, by the name of the child it is about.
turns-about = { $child }: { $text }
