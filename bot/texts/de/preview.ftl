# Not checked by a native speaker.

preview-name = Vorschau
preview-draft = Vorschau: Das bekommt eine Familie, sobald Sie den Plan übernehmen. Was Sie hier antippen, wird nicht gespeichert.
preview-plan = Vorschau: Das bekommt eine Familie am nächsten Abend. Was Sie hier antippen, wird nicht gespeichert.
preview-over = Die Vorschau ist zu Ende. Nichts davon wurde gespeichert.
