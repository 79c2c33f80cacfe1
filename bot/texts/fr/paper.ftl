# Not checked by a native speaker.

paper-child = élève { $number }
paper-page = page { $page } sur { $of }
paper-answers = Réponses
paper-name = Nom
paper-of = sur { $cards }
paper-pages-done = Pages du cahier faites
paper-from-page = à partir de la page { $page }
paper-adult = Adulte
paper-how-to-mark = L’enfant dit chaque réponse à voix haute. Notez combien sont justes. Ce n’est que le résultat d’un soir.

paper-what-it-is = Quelques minutes de calcul mental chaque jour d’école. Les cartes arrivent sur votre téléphone ; vous touchez celles qui ne sont pas encore sues.
paper-scan = Scannez le carré avec l’appareil photo du téléphone et touchez Start.
paper-or-send = Ou ouvrez { $place }, touchez Start et envoyez ce code :
paper-until = Valable jusqu’au
paper-this-family = Ce feuillet est pour la famille de cet enfant seulement.
