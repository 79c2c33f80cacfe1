# Not checked by a native speaker.
fewer-title = { $title }: menos tardes
fewer-title-paged = { $title }: menos tardes, página { $page } de { $pages }
fewer-announced-three = { $who }: dos semanas sin respuesta. Desde el { $day }, tres tardes por semana.
fewer-announced-one = { $who }: dos semanas sin respuesta. Desde el { $day }, una tarde por semana.
fewer-line = { $who }: { $words }
fewer-words-announced-three = tres tardes por semana desde el { $day }
fewer-words-announced-one = una tarde por semana desde el { $day }
fewer-words-three = tres tardes por semana, porque nadie respondió
fewer-words-one = una tarde por semana, porque nadie respondió
fewer-words-kept = cada día de clase, porque así lo mantiene el docente
fewer-words-paused = pausa hasta el { $day }
fewer-words-days = solo { $days }, elección de la familia
fewer-hint = Si lo deja en cada día, la práctica sigue llegando todos los días de clase. La familia también puede pedirlo con un toque. Una llamada suele ayudar más.
fewer-none = Nadie ahora: la práctica llega a cada familia todos los días de clase.
fewer-digest = Menos tardes: { $list }.
fewer-kept = La práctica llega cada día de clase, hasta que la familia vuelva a responder.
fewer-let-go = Llegarán menos tardes desde el { $day }, salvo que la familia responda.
