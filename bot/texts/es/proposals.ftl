# Not checked by a native speaker.

proposals-title = Propuestas: usted decide
proposals-up = { $step }: pasar a { $next } ({ $why }).
proposals-top = { $step }: es el último escalón, pasar a otro bloque ({ $why }).
proposals-would-be = { $step }: lo siguiente sería { $next } ({ $why }).
proposals-not-in-plan = { $step }: listo para avanzar, pero ya no está en el plan ({ $why }).

proposals-split-time = { $step }: conviene dividir ({ $why }). Más tiempo para: { $who }.
proposals-split-leave = { $step }: conviene dividir ({ $why }). Pueden dejarlo: { $who }.
proposals-split-go-on = { $step }: conviene dividir ({ $why }). Pueden seguir con «{ $next }»: { $who }.
proposals-numbers = números { $numbers }

proposals-stay = Seguir igual: { $steps }.
proposals-too-little = Han practicado muy pocos para saberlo: { $steps }.
proposals-nobody = Nadie ha practicado estos días: no hay nada que proponer.
proposals-more = y { $count } más

proposals-secure =
  { $children ->
    [one] seguro en { $secure } de { $children }
   *[other] seguro en { $secure } de { $children }
  }
proposals-not-yet = { $count } todavía no
proposals-too-few = { $count } con muy pocas respuestas

proposals-accept = Aceptar: { $strand }
proposals-accept-all = Aceptar las { $count }

proposals-accepted = En uso desde la próxima tarde: { $steps }.
proposals-moved-on = El plan o los resultados han cambiado entretanto. No se ha hecho nada: mírelo otra vez.
proposals-in-use-already = Eso ya está en el plan. No se ha cambiado nada más.
proposals-earlier-week = Ese resumen es de una semana anterior: sus propuestas ya no valen.
proposals-today = Las de hoy están en «{ $screen }».
