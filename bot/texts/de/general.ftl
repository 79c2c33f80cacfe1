# Not checked by a native speaker.
general-text-only = Ich verstehe nur Text und Knöpfe. Mit /help sehen Sie, was ich kann.
general-private-only = Bitte schreiben Sie mir in einem privaten Chat. Ergebnisse von Kindern kommen nie in eine Gruppe.
