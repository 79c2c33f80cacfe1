# Not checked by a native speaker.
print-a4 = A4
print-letter = Letter
print-on = Imprimer en { $paper }

print-title = { $title } : imprimer
print-slips-none = Feuillets d’inscription : chaque enfant a une aide.
print-slips = { $missing ->
    [one] Feuillets d’inscription : pour { $missing } enfant sans aide. Les liens déjà remis pour cet enfant ne marcheront plus.
   *[other] Feuillets d’inscription : pour { $missing } enfants sans aide. Les liens déjà remis pour ces enfants ne marcheront plus.
  }
print-cards = Cartes : celles du plan de la semaine, à découper, et toutes les réponses.
print-sheets-none = Fiches d’entraînement : une sans nom.
print-sheets = { $offline ->
    [one] Fiches d’entraînement : pour { $offline } enfant dont la famille ne reçoit pas de messages, et une sans nom.
   *[other] Fiches d’entraînement : pour { $offline } enfants dont les familles ne reçoivent pas de messages, et une sans nom.
  }
print-squares = Tableaux de nombres : 1 à 100 et 101 à 200.

print-slips-sent = { $children ->
    [one] Feuillets d’inscription pour { $children } enfant. Découpez-les et ne donnez à chaque famille que le sien.
   *[other] Feuillets d’inscription pour { $children } enfants. Découpez-les et ne donnez à chaque famille que le sien.
  }
print-slips-work = Ils valent pour quatre aides au plus, jusqu’au { $until }. Je n’en garde pas de copie : de nouveaux feuillets remplacent ceux-ci.
print-cards-sent = Imprimez en recto verso, en retournant sur le bord long : chaque réponse est derrière sa carte. Toutes les réponses réunies viennent à la fin.
print-sheet-sent = Une fiche d’entraînement sans nom.
print-sheets-sent = { $children ->
    [one] Fiches d’entraînement pour { $children } enfant, et une sans nom. Ne donnez à chaque famille que la sienne.
   *[other] Fiches d’entraînement pour { $children } enfants, et une sans nom. Ne donnez à chaque famille que la sienne.
  }
print-squares-sent = Tableaux de nombres, 1 à 100 et 101 à 200.

print-no-slips = Chaque enfant a une aide, ou il n’y a pas encore d’enfants. Rien à imprimer.
print-no-plan = Il n’y a pas encore de plan de la semaine en service. Faites-en un sous « { $button } », puis imprimez.
print-no-days = Il n’y a pas d’école cette semaine ni la prochaine. Imprimez quand le congé touche à sa fin.

print-code-wrong = Cela ressemble à un code de feuillet, mais une lettre ou un chiffre n’est pas juste.
print-code-length = Cela ressemble à un code de feuillet, mais j’ai lu { $letters } lettres et chiffres ; un code en a { $length }.
print-code-again = Comparez-le à votre feuillet et renvoyez-le, s’il vous plaît. Les lettres O, I, L et U ne servent jamais.
