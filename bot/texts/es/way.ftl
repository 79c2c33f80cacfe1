# Not checked by a native speaker.
way-clip = Clip
way-pictures = Imágenes
way-single = Una a una
way-words = Solo texto

way-which = ¿Cómo quiere ver las tarjetas?
way-about-clip = { $way }: un vídeo corto, tarjeta tras tarjeta, unos 250 kB por tarde.
way-about-pictures = { $way }: todas las tarjetas de una parte a la vez, unos 100 kB por tarde.
way-about-single = { $way }: cada vez una sola tarjeta, sin límite de tiempo, con la respuesta cuando la pida, unos 80 kB por tarde.
way-about-words = { $way }: tarjetas como texto, solo los relojes en imagen, menos de 60 kB por tarde.
way-untimed = Para { $children }, sin límite de tiempo: imágenes en lugar del clip.
way-from-next = Lo que elija vale desde la próxima pantalla, solo en este teléfono.
way-chosen = { $way }, desde la próxima pantalla.
