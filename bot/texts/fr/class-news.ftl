# Not checked by a native speaker.
class-news-ended = Les séances de { $class } sont terminées.
class-news-no-more = Plus aucune séance ne viendra pour { $children }. Vous n’avez rien à faire.
class-news-thanks = Merci pour chaque soir. Des questions ? Adressez-vous à l’enseignant de la classe.
class-news-resumed = Les séances de { $class } continuent finalement.
class-news-as-before = Les séances pour { $children } viennent comme avant. Le message précédent était une erreur.

class-news-archived = { $class } a été archivée par l’enseignant responsable.
class-news-archived-undo = Plus rien n’est envoyé aux familles. Pendant un jour, tout enseignant de la classe peut revenir en arrière : /undo.
class-news-back = { $class } est de retour : elle avait été archivée par erreur.
class-news-goes-on = Tout continue.

class-news-new-lead = { $class } a un nouvel enseignant responsable.
class-news-link-used = Votre lien a servi. Vous restez co-enseignant ; pour quitter la classe, envoyez /class et touchez « { $teachers } ».
