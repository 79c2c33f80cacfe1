# Not checked by a native speaker.
adjusted-shorter = Vir { $child } gekies: vandag ’n bietjie korter.
adjusted-picked = Vir { $child } gekies.
adjusted-untimed = Sonder tyd: hoe lank dit ook al neem.
