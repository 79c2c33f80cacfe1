# Not checked by a native speaker.

steps-size =
  { $step ->
    [one] de { $step } en { $step }
   *[other] de { $step } en { $step }
  }

steps-like = { $steps } ({ $numbers })

steps-across = { $steps } pasando los { $number }

steps-label-on = { $steps } hasta { $limit }
steps-label-back = hacia atrás { $steps }, 0–{ $limit }
steps-whole-on = contar { $steps } hasta { $limit }
steps-whole-back = contar atrás { $steps }, 0–{ $limit }
steps-limit-on = hasta { $limit }
steps-limit-back = hacia atrás, 0–{ $limit }

steps-practised = ¿Qué se va a practicar?
steps-mixed-in = ¿Qué se va a mezclar?
steps-same-kind = Solo se puede barajar lo que pide el mismo tipo de respuesta.
steps-which = { $strand }: ¿qué paso?
steps-page = Página { $page } de { $pages }, primero los pasos más fáciles.
steps-counting-in = Contar: ¿de cuánto en cuánto?
steps-how-far = Contar { $steps }: ¿hasta dónde?

steps-has-usual = { $sign } tiene pasos habituales en { $grade }
steps-usual = { $sign } paso habitual en { $grade }
steps-none-usual = Ninguno figura como habitual en { $grade }.
