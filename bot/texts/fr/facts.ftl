# Not checked by a native speaker.
facts-clock = l’horloge à { $time }
facts-next = { $question }, { $answer }
