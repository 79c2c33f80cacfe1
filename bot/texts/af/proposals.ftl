# Not checked by a native speaker.

proposals-title = Voorstelle: u besluit
proposals-up = { $step }: gaan oor na { $next } ({ $why }).
proposals-top = { $step }: die boonste sport van die leer, gaan oor na ’n ander lyn ({ $why }).
proposals-would-be = { $step }: volgende sou { $next } wees ({ $why }).
proposals-not-in-plan = { $step }: reg vir die volgende stap, maar nie meer in die plan nie ({ $why }).

proposals-split-time = { $step }: die moeite werd om te verdeel ({ $why }). Meer tyd nodig: { $who }.
proposals-split-leave = { $step }: die moeite werd om te verdeel ({ $why }). Kan dit agterlaat: { $who }.
proposals-split-go-on = { $step }: die moeite werd om te verdeel ({ $why }). Kan aangaan na { $next }: { $who }.
proposals-numbers = nommers { $numbers }

proposals-stay = Bly by: { $steps }.
proposals-too-little = Te min kinders het geoefen om te kan sê: { $steps }.
proposals-nobody = Niemand het in hierdie dae geoefen nie: niks om voor te stel nie.
proposals-more = en nog { $count }

proposals-secure =
  { $children ->
    [one] { $secure } van { $children } kind vas
   *[other] { $secure } van { $children } kinders vas
  }
proposals-not-yet = { $count } nog nie
proposals-too-few = { $count } met te min antwoorde

proposals-accept = Aanvaar: { $strand }
proposals-accept-all = Aanvaar al { $count }

proposals-accepted = In gebruik vanaf die volgende aand: { $steps }.
proposals-moved-on = Die plan of die punte het intussen verander. Niks is gedoen nie: kyk asseblief weer.
proposals-in-use-already = Dit is reeds in die plan. Niks meer is verander nie.
proposals-earlier-week = Daardie weekoorsig is van ’n vroeër week: sy voorstelle is verby.
proposals-today = Vandag s’n staan onder “{ $screen }”.
