# Not checked by a native speaker.
book-words-done = terminado
book-words-about = hacia el { $day }
book-words-never = dentro de más de un año
