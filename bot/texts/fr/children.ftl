# Not checked by a native speaker.
children-none = { $class } : pas encore d’enfants
children-joined = { $joined ->
    [one] { $class } : { $joined } inscrit sur { $all }
   *[other] { $class } : { $joined } inscrits sur { $all }
  }
children-waiting = Pas encore : { $names }
children-left = Plus personne pour aider : { $names }
children-unreached = Les messages n’arrivent plus : { $names }
children-legend = { $sign } a une aide. Touchez un enfant pour changer son surnom ou sa classe, ou pour un nouveau lien.
children-more = { $more ->
    [one] { $more } autre
   *[other] { $more } autres
  }

children-helper-left = La personne qui aidait est partie.
children-not-joined = Pas encore d’inscription.
children-helpers = { $helpers ->
    [one] { $helpers } aide
   *[other] { $helpers } aides
  }
children-helpers-unreached = { $helpers ->
    [one] { $helpers } aide : les messages n’arrivent plus
   *[other] { $helpers } aides : les messages n’arrivent plus
  }
children-helpers-some = { $reachable ->
    [one] { $helpers } aides, dont { $reachable } joignable
   *[other] { $helpers } aides, dont { $reachable } joignables
  }
children-drill = Séance à { $time }
children-drill-own = Séance à { $time }, l’heure choisie par la famille

children-link-title = Un nouveau lien pour { $child } ?
children-link-note = Le lien ou le feuillet donné auparavant ne marchera plus. Les aides déjà là restent.

children-nickname = Quel surnom pour { $child } ? Au plus { $most } caractères, pas de nom de famille.
children-nickname-empty = Je n’y vois aucun surnom.
children-nickname-long = { $typed } compte { $length } caractères, au plus { $most }.
children-nickname-again = Envoyez un surnom de 1 à { $most } caractères.
children-renamed = { $before } s’appelle maintenant { $now }, partout et pour la suite.

children-move-no-class = Vous n’avez pas d’autre classe. Créez-en une avec /newclass, puis déplacez l’enfant.
children-move-title = Dans quelle classe va { $child } ?
children-move-note = Les aides, les résultats et les feuillets suivent. Une séance envoyée aujourd’hui reste ; dès le soir suivant, ce sont le plan, l’heure et le cahier de l’autre classe. Chaque aide reçoit un message, une seule fois.
children-moved = { $child } est maintenant dans { $class }, avec le numéro { $number }.
children-moved-told = Chaque aide reçoit un message.
children-moved-no-plan = Cette classe n’a pas encore de plan de la semaine : rien n’y est envoyé.

children-archived = { $child } est dans les archives.
children-archived-note = Plus aucune séance n’est envoyée et les feuillets ne marchent plus. Les résultats et le numéro sont gardés : « { $button } » permet de faire revenir { $child } pendant { $days } jours. Ensuite, tout est supprimé.
children-archive-list = { $count ->
    [one] { $class } : { $count } enfant archivé
   *[other] { $class } : { $count } enfants archivés
  }
children-archive-tap = Touchez un enfant pour le faire revenir, avec son numéro, ses aides et ses résultats. Ses séances reprennent le soir suivant.
children-back = { $child } est de nouveau sur la liste.
