# Not checked by a native speaker.
-book-questions-shape = le titre, la première et la dernière page, et les pages par jour
book-questions-example = Pebble Path 1-48 2
book-questions-new = Envoyez le prochain cahier : { -book-questions-shape }, comme ceci :
book-questions-new-own = Envoyez le cahier propre à { $name } : { -book-questions-shape }, comme ceci :
book-questions-change = Envoyez-le de nouveau : { -book-questions-shape }. Actuellement :
book-questions-bad-book = Je n’ai pas pu lire { $typed } comme un cahier. Envoyez { -book-questions-shape }, comme ceci :

book-questions-range = Envoyez une page de { $first } à { $last }, ou « terminé ».
book-questions-page-of-class = Quelle page de { $book } est la prochaine pour la classe ? { $range }
book-questions-page-of-child = Quelle page de { $book } est la prochaine pour { $name } ? { $range }
book-questions-bad-page = { $typed } n’est pas une page de { $book }. { $range }
book-questions-further = Les enfants qui sont plus loin restent où ils sont.

book-questions-added = { $book } est dans la file : { $pages }, { $aDay } par jour. Cela compte à partir du prochain soir.
book-questions-changed = Enregistré. Cela compte à partir du prochain soir ; personne ne perd de page.

book-questions-reached = la page { $page } de { $book } vient ensuite
book-questions-reached-end = { $book } est terminé
book-questions-set = { $name } : { $reached }. Cela compte à partir du prochain soir.
book-questions-set-class = { $moved ->
    [one] { $moved } enfant : { $reached }. Cela compte à partir du prochain soir.
   *[other] { $moved } enfants : { $reached }. Cela compte à partir du prochain soir.
  }
book-questions-set-already = Tous les enfants y étaient déjà : { $reached }.
book-questions-stay = { $further ->
    [one] { $further } enfant était plus loin et y reste.
   *[other] { $further } enfants étaient plus loin et y restent.
  }
