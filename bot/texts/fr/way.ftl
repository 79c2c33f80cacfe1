# Not checked by a native speaker.
way-clip = Clip
way-pictures = Images
way-single = Une par une
way-words = Texte seul

way-which = Comment voulez-vous voir les cartes ?
way-about-clip = { $way } : une courte vidéo, carte après carte, environ 250 ko par soir.
way-about-pictures = { $way } : toutes les cartes d’une partie à la fois, environ 100 ko par soir.
way-about-single = { $way } : une seule carte à la fois, sans limite de temps, la réponse quand vous la demandez, environ 80 ko par soir.
way-about-words = { $way } : les cartes en texte, seules les horloges en image, moins de 60 ko par soir.
way-untimed = Pour { $children }, sans limite de temps : des images au lieu du clip.
way-from-next = Votre choix vaut dès le prochain écran, sur ce téléphone seulement.
way-chosen = { $way }, dès le prochain écran.
