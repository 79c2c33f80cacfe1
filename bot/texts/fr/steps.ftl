# Not checked by a native speaker.

steps-size =
  { $step ->
    [one] de { $step } en { $step }
   *[other] de { $step } en { $step }
  }

steps-like = { $steps } ({ $numbers })

steps-across = { $steps } en passant les { $number }

steps-label-on = { $steps } jusqu’à { $limit }
steps-label-back = à rebours { $steps }, 0–{ $limit }
steps-whole-on = compter { $steps } jusqu’à { $limit }
steps-whole-back = à rebours { $steps }, 0–{ $limit }
steps-limit-on = jusqu’à { $limit }
steps-limit-back = à rebours, 0–{ $limit }

steps-practised = Que faut-il travailler ?
steps-mixed-in = Que faut-il ajouter au mélange ?
steps-same-kind = Seul ce qui demande le même genre de réponse peut être mélangé.
steps-which = { $strand } : quelle étape ?
steps-page = Page { $page } sur { $pages }, les plus faciles d’abord.
steps-counting-in = Compter : de combien en combien ?
steps-how-far = Compter { $steps } : jusqu’où ?

steps-has-usual = { $sign } contient des étapes habituelles en { $grade }
steps-usual = { $sign } étape habituelle en { $grade }
steps-none-usual = Aucune n’est notée comme habituelle en { $grade }.
