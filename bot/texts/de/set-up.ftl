# Not checked by a native speaker.
set-up-zone = In welcher Zeitzone sind die Familien? Tippen Sie auf die Uhr, die richtig geht, oder senden Sie eine Stadt wie Nairobi oder Europe/London.
set-up-zones = Davon gibt es mehrere. Welche ist es?
set-up-first-plan = { $class }: der erste Plan
set-up-grade = { $curriculum }. Welche Klassenstufe?
set-up-curriculum = Welcher Lehrplan kommt Ihrem am nächsten?
set-up-suggest = Ich schlage fünf Schritte vor, die zu dieser Zeit im Schuljahr üblich sind. Sie sehen sie durch, bevor etwas verschickt wird.
set-up-no-steps = Für diese Klassenstufe sind keine Schritte genannt. Öffnen Sie den Wochenplan und wählen Sie die Teile selbst.
set-up-cancelled = Alles bleibt, wie es war.
set-up-nothing-asked = Es wartet nichts mehr auf eine Antwort.
set-up-gone-on = Diese Klasse ist schon angelegt, oder es wurde abgebrochen. Senden Sie /class, um zu sehen, wo Sie sind.
