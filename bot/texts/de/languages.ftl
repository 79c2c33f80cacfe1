# Not checked by a native speaker.
languages-which = In welcher Sprache soll ich mit Ihnen sprechen?
languages-scope = Die Karten bleiben in der Sprache der Klasse. Wo nötig, steht die Bedeutung daneben.
languages-unchecked = Diese Übersetzung hat noch niemand geprüft, der Deutsch als Muttersprache spricht. Klingt etwas seltsam, sagen Sie es bitte der Lehrkraft.
languages-which-class = In welcher Sprache rechnet die Klasse?
languages-class-scope = Karten, Zahlwörter und Uhrzeiten stehen in dieser Sprache, egal welche eine Familie sonst gewählt hat. Schon verschickte Karten wechseln mit dem nächsten Bildschirm.
languages-cards-in = Karten: { $language }
