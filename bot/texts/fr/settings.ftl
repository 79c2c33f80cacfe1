# Not checked by a native speaker.
settings-title = Vos réglages
settings-child = { $name } : { $days } à { $time }. { $practised }
settings-child-pace = { $name } : { $pace }. { $practised }
settings-more-children = { $count ->
    [one] Et un enfant de plus.
   *[other] Et { $count } enfants de plus.
  }
settings-data = Envoyé chez vous ce mois-ci : environ { $amount }. Votre téléphone a pu charger plus ou moins.
settings-scope = Les réglages valent pour ce téléphone seul ; l’heure vaut pour la famille.
settings-commands = Et aussi : /language, /share, /mydata, /erase, /stop
settings-kilobytes = { $amount } ko
settings-megabytes = { $amount } Mo
settings-time = Séance à { $time }
settings-way = Comment voir les cartes
settings-days = Quels jours
settings-pause = Pause
settings-back = Vers les réglages
settings-switch-bigger = Plus gros caractères
settings-switch-noTiming = Sans secondes
settings-switch-quiet = Sans son
settings-switch-clockAid = Horloge expliquée
settings-switch-monthly = Image du mois
settings-on-bigger = Caractères plus gros dès le prochain écran.
settings-on-noTiming = Ni vidéo ni secondes dès le prochain écran.
settings-on-quiet = Ce qui arrive tout seul ne sonne plus.
settings-on-clockAid = Les réponses des horloges sont expliquées par un dessin.
settings-on-monthly = Avec le dernier soir du mois vient une image des soirs de votre enfant.
settings-off-bigger = Caractères habituels dès le prochain écran.
settings-off-noTiming = Les cartes reprennent le rythme de la classe.
settings-off-quiet = Les messages sonnent comme le veut votre téléphone.
settings-off-clockAid = Horloges de nouveau sans dessin.
settings-off-monthly = Pas d’image du mois.
settings-sibling-ask = À partir de quel âge un frère ou une sœur peut-il aider ?
settings-sibling-now = Maintenant à partir de { $age } ans. C’est le choix de votre école, dit à qui se joint ; aucune personne qui aide déjà n’est écartée.
settings-sibling = Âge des frères et sœurs
