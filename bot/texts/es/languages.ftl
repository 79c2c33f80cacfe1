# Not checked by a native speaker.
languages-which = ¿En qué idioma prefiere que le hable?
languages-scope = Las tarjetas siguen en el idioma de la clase. Donde hace falta, su significado aparece al lado.
languages-unchecked = Esta traducción aún no la ha revisado una persona nativa. Si algo suena raro, avise al docente de la clase, por favor.
languages-which-class = ¿En qué idioma aprende matemáticas la clase?
languages-class-scope = Las tarjetas, los números en palabras y los relojes van en ese idioma, elija lo que elija cada familia para el resto. Las tarjetas ya enviadas cambian en la pantalla siguiente.
languages-cards-in = Tarjetas: { $language }
