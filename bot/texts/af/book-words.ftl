# Not checked by a native speaker.
book-words-done = klaar
book-words-about = omtrent { $day }
book-words-never = oor meer as ’n jaar
