# Not checked by a native speaker.
book-words-done = fertig
book-words-about = etwa { $day }
book-words-never = in mehr als einem Jahr
