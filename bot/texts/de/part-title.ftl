# Not checked by a native speaker.

part-title-mixed = gemischt: { $parts }

part-title-mixed-steps = gemischt: { $strand }, { $count } Schritte

part-title-mixed-with = { $first } gemischt mit { $others }
