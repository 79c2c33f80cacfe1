# Not checked by a native speaker.
books-title = { $title } : cahiers
books-line = { $number }. { $title } : { $settings }
books-settings = { $pages }, { $aDay } par jour
books-none = Aucun pour l’instant. Les soirs ne demandent pas de pages.
books-one = Touchez-le pour le modifier. Ajoutez le suivant à temps : qui a fini y passe directement.
books-several = Qui en a fini un passe au suivant. Touchez un cahier pour le modifier.
books-own = { $count ->
    [one] { $count } enfant a un cahier à lui, qui passe d’abord.
   *[other] { $count } enfants ont des cahiers à eux, qui passent d’abord.
  }

books-place = { $settings }. Numéro { $place } sur { $inLine }.
books-children = Enfants en cours : { $begun }. Terminé : { $done }. Pas commencé : { $notBegun }.
books-counts-from = Ce que vous changez compte à partir du prochain soir. Personne ne perd de page.
books-tap-pages = Touchez le nombre de pages par jour :
books-too-early = Trop tôt pour dire quand : il faut à la moitié des enfants { $evenings } soirs avec une réponse sur les pages.
books-finish = La moitié de la classe : { $half }. Neuf sur dix : { $nearlyAll }.
books-never = pas d’ici un an
books-own-pace = Chacun à son rythme.
books-own-pace-of = D’après { $known } des { $children } enfants, chacun à son rythme.

books-child = { $settings }. Propre à { $name } ; il passe avant ceux de la classe.
books-child-done = Terminé.
books-child-page = À la page { $page } sur { $last }.

books-gone = Ce cahier est déjà rangé.
books-no-book = Il n’y a pas de cahier où indiquer une page. Ajoutez-en d’abord un.
