# Not checked by a native speaker.

proposals-title = Vorschläge: Sie entscheiden
proposals-up = { $step }: weiter zu { $next } ({ $why }).
proposals-top = { $step }: oberste Stufe, weiter in einem anderen Bereich ({ $why }).
proposals-would-be = { $step }: Als Nächstes käme { $next } ({ $why }).
proposals-not-in-plan = { $step }: bereit für den nächsten Schritt, aber nicht mehr im Plan ({ $why }).

proposals-split-time = { $step }: Aufteilen lohnt sich ({ $why }). Mehr Zeit brauchen: { $who }.
proposals-split-leave = { $step }: Aufteilen lohnt sich ({ $why }). Nicht mehr nötig für: { $who }.
proposals-split-go-on = { $step }: Aufteilen lohnt sich ({ $why }). Schon weiter zu „{ $next }“ könnten: { $who }.
proposals-numbers = Nummern { $numbers }

proposals-stay = Dabei bleiben: { $steps }.
proposals-too-little = Für eine Aussage haben zu wenige Kinder geübt: { $steps }.
proposals-nobody = In diesen Tagen hat niemand geübt: Es gibt nichts vorzuschlagen.
proposals-more =
  { $count ->
    [one] und { $count } weiterer
   *[other] und { $count } weitere
  }

proposals-secure =
  { $children ->
    [one] { $secure } von { $children } Kind sicher
   *[other] { $secure } von { $children } Kindern sicher
  }
proposals-not-yet = { $count } noch nicht
proposals-too-few = { $count } mit zu wenigen Antworten

proposals-accept = Annehmen: { $strand }
proposals-accept-all = Alle { $count } annehmen

proposals-accepted = Gilt ab dem nächsten Abend: { $steps }.
proposals-moved-on = Plan oder Ergebnisse haben sich inzwischen geändert. Es wurde nichts getan: Bitte noch einmal ansehen.
proposals-in-use-already = Das steht schon im Plan. Sonst wurde nichts geändert.
proposals-earlier-week = Dieser Wochenbericht ist von einer früheren Woche: Seine Vorschläge gelten nicht mehr.
proposals-today = Die von heute stehen unter „{ $screen }“.
