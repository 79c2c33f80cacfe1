# Not checked by a native speaker.

preview-name = Aperçu
preview-draft = Aperçu : ce qu’une famille recevra quand vous appliquerez le plan. Rien de ce que vous touchez ici n’est gardé.
preview-plan = Aperçu : ce qu’une famille recevra le prochain soir d’école. Rien de ce que vous touchez ici n’est gardé.
preview-over = L’aperçu est terminé. Rien n’en a été gardé.
