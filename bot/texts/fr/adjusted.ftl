# Not checked by a native speaker.
adjusted-shorter = Choisi pour { $child } : un peu plus court aujourd’hui.
adjusted-picked = Choisi pour { $child }.
adjusted-untimed = Sans limite de temps : le temps qu’il faut.
