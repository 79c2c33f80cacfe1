# Not checked by a native speaker.
commands-today = Die Übung von heute noch einmal
commands-time = Eine andere Uhrzeit: /time 18:15
commands-show = Clip, Bilder oder nur Text
commands-settings = Ihre Einstellungen
commands-language = Eine andere Sprache
commands-days = Tage, an denen die Übung kommt
commands-pause = Eine Pause vom Üben
commands-share = Ein Link für noch eine erwachsene Person
commands-class = Für Lehrkräfte: Ihre Klasse
commands-newclass = Für Lehrkräfte: Klasse anlegen
commands-undo = Für Lehrkräfte: Änderung zurücknehmen
commands-stop = Alle Nachrichten beenden
commands-mydata = Was über Ihr Kind gespeichert ist
commands-erase = Alles löschen
commands-help = Was dieser Bot macht
