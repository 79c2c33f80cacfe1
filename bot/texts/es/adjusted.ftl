# Not checked by a native speaker.
adjusted-shorter = Pensado para { $child }: hoy, un poco más corto.
adjusted-picked = Pensado para { $child }.
adjusted-untimed = Sin límite de tiempo: lo que haga falta.
