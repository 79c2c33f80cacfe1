# Not checked by a native speaker.
family-notice-heading = { $child } · { $class }
family-notice-what = Quelques minutes de calcul mental chaque jour d’école. Vous lisez ou montrez les cartes, l’enfant répond à voix haute, vous touchez celles qui ne sont pas encore sues.
family-notice-kept = Ce qui est gardé
family-notice-kept-what = Le surnom, quelles cartes étaient justes et les pages du cahier. Ni nom complet, ni date de naissance, ni photo, ni adresse. De vous : ce compte de messagerie et vos réglages.
family-notice-seen = Qui le voit
family-notice-seen-by = Vous, les autres aides de l’enfant et les enseignants de la classe. Aucune autre famille. Les enseignants ne voient pas votre compte.
family-notice-long = Combien de temps
family-notice-how-long = Les résultats pendant 13 mois. Tout jusqu’à 30 jours après que l’enfant a quitté la classe. L’école décide ; le droit local s’applique.
family-notice-choice = Votre choix, à tout moment
family-notice-commands = /stop arrête les messages, /mydata vous envoie une copie, /erase efface tout. Personne ne demande pourquoi.
family-notice-snapshot = Un score est la photo d’un soir, pas un jugement sur un enfant.

family-disagreed = C’est noté. Rien n’a été gardé. Le lien reste valable si vous changez d’avis.
family-joined = Vous aidez maintenant { $child }.
family-when = La séance arrive { $days } à { $time }. Une autre heure vous convient mieux ? Envoyez par exemple /time 18:00.
family-how-to-go-on = Envoyez /today pour revoir la séance du jour et /stop pour tout arrêter.

family-hello = Bonjour.
family-what-this-is = Ce bot apporte quelques minutes de calcul mental aux enfants des classes qui l’utilisent.
family-for-helpers = Vous aidez un enfant : ouvrez le lien d’accès reçu de l’enseignant, ou envoyez-moi le code de votre feuillet.
family-teachers-teach = Vous enseignez : envoyez /teach pour commencer.
family-teachers-ask = Vous enseignez : demandez une invitation à la personne qui gère ce bot.

family-nothing-today = { $child } : pas encore de séance aujourd’hui. Elle arrive { $days } à { $time }.
family-practice-stopped = Les séances pour { $children } se sont arrêtées. Renseignez-vous auprès de l’école ; /stop met toujours fin à votre part.
family-time-set = La séance arrive maintenant à { $time }. Si cette heure est passée aujourd’hui, cela commence demain.
family-time-missing = Ajoutez une heure, s’il vous plaît.
family-time-bad = { $typed } n’est pas une heure que je peux utiliser.
family-time-how = Envoyez une heure entre { $from } et { $to }, comme ceci : /time 18:15
family-too-late = Il est déjà { $now } : pas de rappel après { $latest }. Commencez ce soir quand cela vous convient.

family-ask-to-leave = Ne plus aider { $children } ?
family-leaving-means = Plus aucun message ne viendra, et votre accord est retiré. Pour revenir, ouvrez encore une fois votre lien ou demandez-en un nouveau à l’enseignant.
family-leaving-keeps = Ce qui a été noté reste dans la classe. Faut-il l’effacer aussi ? Envoyez alors plutôt /erase : après votre départ, ce ne sera plus possible.
family-left = C’est fait. Plus aucun message ne viendra. Merci pour le temps donné.
family-staying = Très bien. Tout reste comme avant.
family-helps-nobody = Vous n’aidez aucun enfant ici. Ce que vous faites comme enseignant se trouve sous /class et continue.
