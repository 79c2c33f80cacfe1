# What the digest proposes to the teacher. $step and $next are steps; $why counts children: "9 of 10 children secure, 1 not yet".
proposals-title = Proposals: you decide
proposals-up = { $step }: move up to { $next } ({ $why }).
proposals-top = { $step }: the top of its ladder, move up to another strand ({ $why }).
proposals-would-be = { $step }: next would be { $next } ({ $why }).
proposals-not-in-plan = { $step }: ready to move up, and not in the plan any more ({ $why }).

# Some children differ from the rest. $who is a list of one or more nicknames, or of numbers on the class list.
proposals-split-time = { $step }: worth splitting ({ $why }). { $who } need more time.
proposals-split-leave = { $step }: worth splitting ({ $why }). { $who } could leave it.
proposals-split-go-on = { $step }: worth splitting ({ $why }). { $who } could go on to { $next }.
proposals-numbers = numbers { $numbers }

# $steps is a list; each of its steps has its $why in brackets after it.
proposals-stay = Stay: { $steps }.
proposals-too-little = Too few children practised to say: { $steps }.
proposals-nobody = Nobody has practised in these days: nothing to propose.
proposals-more = and { $count } more

# The pieces of $why, which stand one after the other with commas between.
proposals-secure =
  { $children ->
    [one] { $secure } of { $children } child secure
   *[other] { $secure } of { $children } children secure
  }
proposals-not-yet = { $count } not yet
proposals-too-few = { $count } with too few answers

# On buttons. $strand is a kind of practice.
proposals-accept = Accept: { $strand }
proposals-accept-all = Accept all { $count }

proposals-accepted = In use from the next evening: { $steps }.
proposals-moved-on = The plan or the marks have changed since. Nothing was done: please look again.
proposals-in-use-already = That is in the plan already. Nothing more was changed.
proposals-earlier-week = That digest is of an earlier week: its proposals are over.
# $screen is the name of a button, "Class now".
proposals-today = { $screen } has those of today.
