# How one child's evenings differ from the class's, for its teacher.
own-way-title = { $child }: for this child only
own-way-no-plan = No week plan is in use yet.
own-way-untimed = No timing: cards come as pictures, never as a clip.
own-way-from-next = From the next evening on. The family and the class’s teachers see it, nobody else.

# A line of the plan; $amount is "10 cards". $before is what the class practises instead.
own-way-part = { $part }, { $amount }
own-way-instead = { $part }, { $amount }, instead of { $before }
own-way-no-easier = { $part }, { $amount } (no easier step here)
own-way-no-harder = { $part }, { $amount } (no harder step here)

# $changes is one or more of those below, with commas between.
own-way-only = For this child only: { $changes }
own-way-easier = easier steps
own-way-harder = harder steps
own-way-fewer = fewer cards
own-way-no-timing = no timing
