# Not checked by a native speaker.
fewer-title = { $title } : moins de soirs
fewer-title-paged = { $title } : moins de soirs, page { $page } sur { $pages }
fewer-announced-three = { $who } : deux semaines sans réponse. Dès le { $day }, trois soirs par semaine.
fewer-announced-one = { $who } : deux semaines sans réponse. Dès le { $day }, un soir par semaine.
fewer-line = { $who } : { $words }
fewer-words-announced-three = trois soirs par semaine dès le { $day }
fewer-words-announced-one = un soir par semaine dès le { $day }
fewer-words-three = trois soirs par semaine, car personne n’a répondu
fewer-words-one = un soir par semaine, car personne n’a répondu
fewer-words-kept = chaque jour d’école, gardé ainsi par l’enseignant
fewer-words-paused = pause jusqu’au { $day }
fewer-words-days = { $days } seulement, au choix de la famille
fewer-hint = Gardée chaque jour, la séance vient quand même tous les jours d’école. La famille peut aussi le demander d’un appui. Un appel aide souvent davantage.
fewer-none = Personne pour le moment : la séance vient dans chaque famille tous les jours d’école.
fewer-digest = Moins de soirs : { $list }.
fewer-kept = La séance vient chaque jour d’école, jusqu’à ce que la famille réponde de nouveau.
fewer-let-go = Moins de soirs viendront dès le { $day }, sauf si la famille répond.
