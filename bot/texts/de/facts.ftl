# Not checked by a native speaker.
facts-clock = Uhrzeit { $time }
facts-next = { $question }, { $answer }
