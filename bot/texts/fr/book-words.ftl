# Not checked by a native speaker.
book-words-done = terminé
book-words-about = vers le { $day }
book-words-never = dans plus d’un an
