# Not checked by a native speaker.
digest-strands-secure-means = Acquis : nous attendons 9 bonnes réponses sur 10, d’après { $answers } réponses ou plus.

digest-strands-new = nouveau cette semaine
digest-strands-new_step = nouvelle étape
digest-strands-same = à peu près comme la semaine dernière
digest-strands-up = en hausse, contre { $percent } %
digest-strands-down = en baisse, contre { $percent } %

digest-strands-tally = { $strand } { $right } sur { $asked }
digest-strands-changed = { $tally } ({ $change })
digest-strands-line = Bonnes réponses : { $tallies }.
digest-strands-line-all-new = Bonnes réponses : { $tallies }. Tout est nouveau cette semaine.
digest-strands-line-all-same = Bonnes réponses : { $tallies }. Tout est à peu près comme la semaine dernière.
digest-strands-line-others-same = Bonnes réponses : { $tallies }. Le reste est à peu près comme la semaine dernière.

digest-strands-title = Bonnes réponses par domaine
digest-strands-nothing = Personne ne s’est exercé ces jours-ci. On ne peut rien en dire.
digest-strands-row = { $tally }, { $change }
digest-strands-secure = acquis pour { $secure } des { $children }
digest-strands-not-yet = pas encore pour { $count }
digest-strands-rose = { $count } en hausse
digest-strands-slipped = { $count } en baisse
digest-strands-legend = Semaine dernière : les mêmes enfants aux mêmes étapes.
digest-strands-legend-own = { digest-strands-legend } En hausse, en baisse : par rapport à ses propres quatre semaines.
