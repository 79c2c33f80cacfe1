# Not checked by a native speaker.
digest-files-nothing = Todavía no hay nada que dibujar: en estos días no ha practicado nadie de esta clase.
digest-files-no-picture = No he podido hacer esa imagen. El mensaje y la tabla dicen lo mismo; mire ahí, por favor.
