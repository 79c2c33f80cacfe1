# Not checked by a native speaker.
report-strands = Ce qui a été pratiqué
report-weeks = part juste, semaine par semaine
report-dots = un point pour chaque soir fait
report-steps = Petites étapes suivantes
report-not-said = Ce que cette page ne dit pas
report-page = page { $page } sur { $of }
report-child = élève { $number }
report-the-child = Cet enfant
report-foot = Fait le { $day } d’après ce que la famille a noté à la maison.

report-lead = { $days ->
    [one] { $name } a fait du calcul mental à la maison { $practised } jour d’école sur { $days }, du { $first } au { $last }.
   *[other] { $name } a fait du calcul mental à la maison { $practised } jours d’école sur { $days }, du { $first } au { $last }.
  }
report-lead-none = { $name } n’a aucun soir noté pendant ces semaines ; il n’y a donc encore rien à dire.
report-pages-done = { $count ->
    [one] { $count } page du cahier a été faite.
   *[other] { $count } pages du cahier ont été faites.
  }

report-secure = Su et bien su : { $steps }.
report-in_between = En bonne voie : { $steps }.
report-not_yet = Demande encore du temps : { $steps }.
report-too_few = Tout juste commencé, trop tôt pour le dire : { $steps }.
report-meeting = { $name } apprend encore à connaître : { $facts }.

report-say-together = À dire ensemble à voix haute, une fois par jour : { $facts }.
report-go-on = Prêt pour la suite : { $step }.
report-as-now = Continuez ainsi : quelques minutes, et du repos quand la journée a été longue.

report-no-test = Ce n’est ni un test ni un diagnostic. Cela ne dit pas si un enfant est intelligent.
report-compared = { $name } : aucune comparaison avec qui que ce soit ; chaque ligne ne parle que de ses propres soirs.
report-whose-word = Ce qui est juste, c’est ce que la famille a noté. D’un soir sans notes on ne sait rien ; ce n’est pas un zéro.

report-six-weeks = 6 dernières semaines
report-twelve-weeks = 12 dernières semaines
report-since-start = Depuis le début

report-choose-class = { $title } : rapports
report-choose-child = { $title } : rapport sur { $name }
report-every-child = Un PDF d’une page ou deux par enfant, en mots que les parents comprennent.
report-one-child = Un PDF d’une page ou deux, en mots que les parents comprennent.
report-own-evenings = Il parle des soirs de l’enfant lui-même : aucun autre enfant, aucun classement.
report-choose-span = Choisissez jusqu’où il remonte, puis créez-le.
report-sent-one = Le rapport. Merci de le lire avant de le remettre.
report-sent = Rapports sur { $children } enfants, chacun sur ses propres pages. Merci de les lire avant de les remettre, et de ne donner à chaque famille que le sien.
report-nobody = Il n’y a pas encore d’enfants dans cette classe ; il n’y a donc pas de rapport à faire.
