# Not checked by a native speaker.
general-text-only = Je ne comprends que le texte et les boutons. Envoyez /help pour voir ce que je sais faire.
general-private-only = Écrivez-moi dans une conversation privée, s’il vous plaît. Les résultats des enfants ne vont jamais dans un groupe.
