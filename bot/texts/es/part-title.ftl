# Not checked by a native speaker.

part-title-mixed = mezcla: { $parts }

part-title-mixed-steps = mezcla: { $strand }, { $count } pasos

part-title-mixed-with = mezcla de { $first } con { $others }
