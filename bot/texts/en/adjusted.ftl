# What is different in a drill that is adjusted for one child: kind words, and none for why.
adjusted-shorter = Picked for { $child }: a little shorter today.
adjusted-picked = Picked for { $child }.
adjusted-untimed = No timing: as long as it takes.
