# Not checked by a native speaker.
child-picture-evenings = { $count ->
    [one] { $count } soir en douze semaines
   *[other] { $count } soirs en douze semaines
  }
child-picture-footer = Les soirs de cet enfant seulement. Les barres montrent la part de réponses justes, selon l’aide ; un trait court est une semaine sans rien de noté.
child-picture-sent = { $child } : ses propres soirs, sans comparaison avec personne.
child-picture-none = Rien à dessiner pour l’instant : aucun soir de cet enfant n’a été noté ces douze dernières semaines.
