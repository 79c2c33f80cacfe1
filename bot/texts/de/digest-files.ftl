# Not checked by a native speaker.
digest-files-nothing = Es gibt noch nichts zu zeichnen: In diesen Tagen hat kein Kind dieser Klasse geübt.
digest-files-no-picture = Dieses Bild ließ sich nicht zeichnen. Nachricht und Tabelle sagen dasselbe; bitte nehmen Sie diese.
