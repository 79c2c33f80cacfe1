# Not checked by a native speaker.
commands-today = La séance du jour, à nouveau
commands-time = Une autre heure : /time 18:15
commands-show = Clip, images ou texte seul
commands-settings = Vos réglages
commands-language = Une autre langue
commands-days = Les jours où vient la séance
commands-pause = Une pause
commands-share = Un lien pour un autre adulte
commands-class = Enseignants : votre classe
commands-newclass = Enseignants : créer une classe
commands-undo = Enseignants : défaire un changement
commands-stop = Arrêter tous les messages
commands-mydata = Ce qui est gardé sur votre enfant
commands-erase = Tout effacer
commands-help = Ce que fait ce bot
