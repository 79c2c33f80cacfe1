# Not checked by a native speaker.
quote-typed = «{ $text }»
