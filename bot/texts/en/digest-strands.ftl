# What "secure" stands for, wherever it is used.
digest-strands-secure-means = Secure: we expect 9 in 10 right, going by { $answers } answers or more.

# How a strand went beside the week before.
digest-strands-new = new this week
digest-strands-new_step = new step
digest-strands-same = about as last week
digest-strands-up = up from { $percent } %
digest-strands-down = down from { $percent } %

# A strand with how many answers were right.
digest-strands-tally = { $strand } { $right } of { $asked }
# $change is one of the five above.
digest-strands-changed = { $tally } ({ $change })
# $tallies are such, with semicolons between.
digest-strands-line = Right of asked: { $tallies }.
digest-strands-line-all-new = Right of asked: { $tallies }. All new this week.
digest-strands-line-all-same = Right of asked: { $tallies }. All about as last week.
digest-strands-line-others-same = Right of asked: { $tallies }. The others about as last week.

digest-strands-title = By strand, right of asked
digest-strands-nothing = Nobody has practised in these days. Nothing can be said.
digest-strands-row = { $tally }, { $change }
# How many children; these stand behind the row, with semicolons between.
digest-strands-secure = { $secure } of { $children } secure
digest-strands-not-yet = { $count } not yet
digest-strands-rose = { $count } rose
digest-strands-slipped = { $count } slipped
digest-strands-legend = Last week: the same children on the same steps.
digest-strands-legend-own = { digest-strands-legend } Rose and slipped: beside a child’s own four weeks.
