# Not checked by a native speaker.
facts-clock = el reloj a { $time }
facts-next = { $question }, { $answer }
