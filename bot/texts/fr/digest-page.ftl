# Not checked by a native speaker.
digest-page-grid-note = chiffres : part juste, en %
digest-page-answer = { $headline }.
digest-page-evenings = { $ended }.
digest-page-sent = La semaine sur une page. Des noms d’enfants y figurent : imprimez-la pour vous seulement.
