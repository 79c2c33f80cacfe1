# Not checked by a native speaker.
sharing-ask = Un autre adulte pour aider { $name } ?
sharing-what = Un lien s’ouvre une fois, dans les { $days } jours. Qui l’ouvre lit la notice et donne son accord, puis reçoit les séances de { $name } et voit ce qui est noté.
sharing-helpers = { $count ->
    [one] { $name } a maintenant { $count } aide. L’enseignant voit le nombre, aucun nom.
   *[other] { $name } a maintenant { $count } aides. L’enseignant voit le nombre, aucun nom.
  }
sharing-open = Un lien de vous est ouvert jusqu’au { $until }. Un nouveau prend sa place.
sharing-not-sibling = Un lien pour un autre adulte vient d’un parent ou d’un autre adulte. Demandez-le à l’un d’eux.
sharing-many = { $name } a { $most } aides, autant qu’il peut y en avoir ainsi. L’enseignant peut donner un feuillet de plus.
sharing-week = { $most } liens par semaine peuvent être passés, et ceux de cette semaine sont donnés. L’enseignant peut donner un feuillet de plus.
sharing-whom = Qui un autre adulte doit-il aider ?
sharing-names = Vous aidez { $names }.
sharing-link = Pour une aide de plus à { $name }
sharing-pass-on = Donnez ce lien à un adulte que vous connaissez bien, et à personne d’autre :
sharing-until = Il s’ouvre une fois, jusqu’au { $until }. /stop met fin à votre part ; la sienne continue.
sharing-make = Créer le lien
