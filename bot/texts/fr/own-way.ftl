# Not checked by a native speaker.

own-way-title = { $child } : pour cet enfant seulement
own-way-no-plan = Aucun plan de la semaine n’est encore en vigueur.
own-way-untimed = Sans limite de temps : les cartes arrivent en images, jamais en clip.
own-way-from-next = À partir du prochain soir d’école. La famille et les enseignants de la classe le voient, personne d’autre.

own-way-part = { $part }, { $amount }
own-way-instead = { $part }, { $amount }, au lieu de : { $before }
own-way-no-easier = { $part }, { $amount } (pas d’étape plus facile ici)
own-way-no-harder = { $part }, { $amount } (pas d’étape plus difficile ici)

own-way-only = Pour cet enfant seulement : { $changes }
own-way-easier = étapes plus faciles
own-way-harder = étapes plus difficiles
own-way-fewer = moins de cartes
own-way-no-timing = sans limite de temps
