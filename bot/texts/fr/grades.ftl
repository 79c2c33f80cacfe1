# Not checked by a native speaker.

grades-england = Angleterre
grades-ccss = Common Core
grades-caps = Afrique du Sud
grades-acara = Australie

grades-name = { $grade }, { $curriculum }

grades-title = { $class } : étapes habituelles
grades-now = Actuellement : { $grade }.
grades-none = Actuellement : aucun niveau, toutes les étapes se valent.
grades-only-sorts = Cela trie seulement les étapes affichées : c’est le programme de votre école qui décide.
grades-which-curriculum = Quel programme est le plus proche du vôtre ?
grades-which = { $curriculum } : quel niveau ?
