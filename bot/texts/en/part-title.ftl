# A part that mixes several steps. $parts is a list of steps, or of kinds of practice where there is little room.
part-title-mixed = mixed: { $parts }

# A part that mixes several steps of one kind of practice; $count is two or more.
part-title-mixed-steps = mixed: { $strand }, { $count } steps

# The same inside a sentence, where a colon would be in the way. $first is a step, $others a list of one or more.
part-title-mixed-with = { $first } mixed with { $others }
