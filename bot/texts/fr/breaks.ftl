# Not checked by a native speaker.
breaks-how = Envoyez les jours et un nom. Par exemple : 12 oct. au 16 oct. Vacances d’automne
breaks-one-day = Un seul jour suffit aussi : 4 sept. Fête du sport
breaks-untitled = Congé

breaks-list = { $class } : congés
breaks-list-page = { $class } : congés, page { $page } sur { $pages }
breaks-line = { $title } : { $days }
breaks-none = Aucun à venir. Les jours de congé, rien n’est envoyé.
breaks-tap-to-remove = Touchez un congé pour le retirer.
breaks-button = ✗ { $title }, { $day }

breaks-added = { $title } : { $days } { $year }
breaks-no-school-day = Aucun jour d’école de cette classe n’en fait partie : cela ne change rien.
breaks-one-school-day = Un jour d’école, un { $weekday }. Rien n’est envoyé ce jour-là.
breaks-school-days = { $days } jours d’école, { $weekdays }. Rien n’est envoyé ces jours-là.
breaks-over = C’est déjà passé : seuls le bilan et les rapports en tiennent compte.
breaks-today-stays = Une séance déjà envoyée aujourd’hui reste.
breaks-there-already = Il y était déjà ; rien n’a été ajouté.
breaks-removed = { $title } : retiré.

breaks-bad-shape = Je n’ai pas pu lire { $typed } comme un congé.
breaks-bad-date = { $typed } n’est pas une date du calendrier.
breaks-bad-slash = { $typed } peut vouloir dire deux dates. Écrivez le mois en lettres, comme 3 avril.
breaks-bad-order = { $typed } : le dernier jour vient avant le premier.
breaks-bad-long = { $days } jours, c’est trop long pour un congé : { $most } au plus.
breaks-bad-weekday = Le { $date } { $year } est un { $weekday }. Renvoyez le congé avec le bon jour, s’il vous plaît.
breaks-date = { $day } { $month }
breaks-date-year = { $day } { $month } { $year }

breaks-holidays = { $class } : jours fériés
breaks-holidays-of = { $place }, les douze prochains mois, jours d’école seulement.
breaks-holidays-none = Aucun qui ne soit déjà dans vos congés.
breaks-holidays-ticked = { $chosen } sur { $of } cochés. Touchez un jour pour le laisser de côté ou le reprendre.
breaks-holidays-compare = Comparez avec le calendrier de votre école : la loi peut déplacer des jours au dernier moment.
breaks-holidays-page = Page { $page } sur { $pages }
breaks-holidays-add = { $chosen ->
    [one] Ajouter ce jour
   *[other] Ajouter ces { $chosen } jours
  }
breaks-holidays-there = Ils y étaient déjà ; rien n’a été ajouté.
breaks-holidays-added = { $added ->
    [one] { $added } jour férié ajouté.
   *[other] { $added } jours fériés ajoutés.
  }
breaks-whose-holidays = Les jours fériés de quel pays ?
breaks-which-region = { $country } : quelle région ?
breaks-choose-country = Choisissez le pays de l’école.
breaks-some-in-region = Certains jours fériés ne valent que dans une région.
breaks-places-page = Page { $page } sur { $pages }, par ordre alphabétique.
