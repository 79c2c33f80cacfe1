# Not checked by a native speaker.
roster-problems = Rien n’est encore ajouté. Corrigez ceci et renvoyez toute la liste :
roster-line-long = Ligne { $line } : { $value } compte { $length } caractères, au plus { $most }. Raccourcissez-le.
roster-line-twice = Ligne { $line } : { $value } est aussi à la ligne { $first }. Ajoutez une lettre à l’un des deux.
roster-line-present = Ligne { $line } : { $value } est déjà dans la classe. Retirez-le ou ajoutez une lettre.
roster-row-long = Ligne { $line } : { $value } compte { $length } caractères, au plus { $most }. Raccourcissez-le.
roster-row-twice = Ligne { $line } : { $value } est aussi à la ligne { $first }. Ajoutez une lettre à l’un des deux.
roster-row-present = Ligne { $line } : { $value } est déjà dans la classe. Retirez-le ou ajoutez une lettre.
roster-and-more = { $more ->
    [one] et { $more } autre
   *[other] et { $more } autres
  }
roster-empty = Je n’y ai trouvé aucun surnom.
roster-too-many = Cela fait { $sent } surnoms ; avec les { $present } déjà là, c’est plus de { $most }.
roster-send-fewer = Rien n’a été ajouté. Envoyez-en moins ou créez une deuxième classe.

roster-links = Un lien par enfant. Donnez à chaque famille le sien, et lui seul.
roster-links-note = Un lien sert à quatre aides au plus, pendant 60 jours. Je n’en garde pas de copie : un nouveau lien remplace l’ancien.
roster-all-have = Chaque enfant a une aide. Pour en ajouter une, créez un nouveau lien pour cet enfant.
roster-without = { $children ->
    [one] { $children } enfant n’a pas d’aide.
   *[other] { $children } enfants n’ont pas d’aide.
  }
roster-make-links = Créer de nouveaux liens pour eux ? Les liens déjà donnés pour ces enfants ne marcheront plus.
roster-links-made = Des liens ont été créés depuis ; ils sont plus bas. Si aucune liste n’est venue, touchez encore une fois.

roster-added = { $children ->
    [one] { $children } enfant ajouté. Comment les familles vont-elles s’inscrire ?
   *[other] { $children } enfants ajoutés. Comment les familles vont-elles s’inscrire ?
  }
roster-by-slip = { $button } : un feuillet par enfant, sur papier.
roster-by-link = { $button } : un lien par enfant, à transmettre.
roster-not-yet = Rien n’est créé sans votre demande. Ce que vous créez ensuite remplace ce qui précède.
roster-surname = Plus d’un mot : { $nickname }. Des surnoms seulement, s’il vous plaît, pas de noms de famille.
roster-surnames = { $more ->
    [one] Plus d’un mot : { $nickname } et { $more } autre. Des surnoms seulement, s’il vous plaît, pas de noms de famille.
   *[other] Plus d’un mot : { $nickname } et { $more } autres. Des surnoms seulement, s’il vous plaît, pas de noms de famille.
  }
