# Not checked by a native speaker.

part-title-mixed = gemeng: { $parts }

part-title-mixed-steps = gemeng: { $strand }, { $count } stappe

part-title-mixed-with = { $first } gemeng met { $others }
