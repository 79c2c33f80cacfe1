# Not checked by a native speaker.
digest-strands-secure-means = Vas: ons verwag 9 uit 10 reg, gegrond op { $answers } antwoorde of meer.

digest-strands-new = nuut hierdie week
digest-strands-new_step = nuwe stap
digest-strands-same = omtrent soos verlede week
digest-strands-up = op vanaf { $percent }%
digest-strands-down = af vanaf { $percent }%

digest-strands-tally = { $strand } { $right } van { $asked }
digest-strands-changed = { $tally } ({ $change })
digest-strands-line = Regte antwoorde: { $tallies }.
digest-strands-line-all-new = Regte antwoorde: { $tallies }. Alles nuut hierdie week.
digest-strands-line-all-same = Regte antwoorde: { $tallies }. Alles omtrent soos verlede week.
digest-strands-line-others-same = Regte antwoorde: { $tallies }. Die ander omtrent soos verlede week.

digest-strands-title = Regte antwoorde per lyn
digest-strands-nothing = Niemand het in hierdie dae geoefen nie. Daar is niks te sê nie.
digest-strands-row = { $tally }, { $change }
digest-strands-secure = { $secure } van { $children } vas
digest-strands-not-yet = { $count } nog nie
digest-strands-rose = { $count } het gestyg
digest-strands-slipped = { $count } het gedaal
digest-strands-legend = Verlede week: dieselfde kinders op dieselfde stappe.
digest-strands-legend-own = { digest-strands-legend } Gestyg en gedaal: teenoor ’n kind se eie vier weke.
