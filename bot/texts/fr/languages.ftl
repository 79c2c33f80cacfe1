# Not checked by a native speaker.
languages-which = Dans quelle langue souhaitez-vous que je vous parle ?
languages-scope = Les cartes restent dans la langue de la classe. Si besoin, leur sens est donné à côté.
languages-unchecked = Cette traduction n’a pas encore été relue par une personne de langue maternelle française. Si quelque chose vous paraît étrange, dites-le à l’enseignant.
languages-which-class = Dans quelle langue la classe fait-elle des mathématiques ?
languages-class-scope = Les cartes, les nombres en lettres et les heures sont dans cette langue, quelle que soit celle que la famille a choisie pour le reste. Les cartes déjà envoyées changent à l’écran suivant.
languages-cards-in = Cartes : { $language }
