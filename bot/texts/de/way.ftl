# Not checked by a native speaker.
way-clip = Clip
way-pictures = Bilder
way-single = Einzeln
way-words = Nur Text

way-which = Wie sollen die Karten gezeigt werden?
way-about-clip = { $way }: ein kurzes Video, Karte für Karte, etwa 250 kB am Abend.
way-about-pictures = { $way }: alle Karten eines Teils auf einmal, etwa 100 kB am Abend.
way-about-single = { $way }: immer nur eine Karte, ohne Zeitvorgabe, die Antwort auf Wunsch, etwa 80 kB am Abend.
way-about-words = { $way }: Karten als Text, nur Uhren als Bild, unter 60 kB am Abend.
way-untimed = Für { $children } ohne Zeitvorgabe: Bilder statt Clip.
way-from-next = Ihre Wahl gilt ab dem nächsten Bildschirm, nur auf diesem Telefon.
way-chosen = { $way }, ab dem nächsten Bildschirm.
