# Not checked by a native speaker.

proposals-title = Propositions : à vous de décider
proposals-up = { $step } : passer à « { $next } » ({ $why }).
proposals-top = { $step } : dernier échelon, passer à un autre domaine ({ $why }).
proposals-would-be = { $step } : ensuite viendrait « { $next } » ({ $why }).
proposals-not-in-plan = { $step } : prêt pour la suite, mais n’est plus dans le plan ({ $why }).

proposals-split-time = { $step } : à partager en groupes ({ $why }). Encore du temps pour : { $who }.
proposals-split-leave = { $step } : à partager en groupes ({ $why }). Peuvent arrêter : { $who }.
proposals-split-go-on = { $step } : à partager en groupes ({ $why }). Peuvent passer à « { $next } » : { $who }.
proposals-numbers = numéros { $numbers }

proposals-stay = Continuer : { $steps }.
proposals-too-little = Trop peu d’enfants se sont exercés pour le dire : { $steps }.
proposals-nobody = Personne ne s’est exercé ces jours-ci : rien à proposer.
proposals-more =
  { $count ->
    [one] et { $count } autre
   *[other] et { $count } autres
  }

proposals-secure =
  { $children ->
    [one] acquis pour { $secure } enfant sur { $children }
   *[other] acquis pour { $secure } des { $children } enfants
  }
proposals-not-yet = pas encore pour { $count }
proposals-too-few = trop peu de réponses pour { $count }

proposals-accept = Accepter : { $strand }
proposals-accept-all = Accepter les { $count }

proposals-accepted = En vigueur dès le prochain soir d’école : { $steps }.
proposals-moved-on = Le plan ou les résultats ont changé entre-temps. Rien n’a été fait : regardez à nouveau.
proposals-in-use-already = C’est déjà dans le plan. Rien d’autre n’a été changé.
proposals-earlier-week = Ce bilan est celui d’une semaine passée : ses propositions ne valent plus.
proposals-today = Celles d’aujourd’hui sont dans « { $screen } ».
