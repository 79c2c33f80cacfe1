# Not checked by a native speaker.

part-title-mixed = mélange : { $parts }

part-title-mixed-steps = mélange : { $strand }, { $count } étapes

part-title-mixed-with = { $first } en mélange avec { $others }
