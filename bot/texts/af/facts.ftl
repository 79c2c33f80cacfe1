# Not checked by a native speaker.
facts-clock = die horlosie op { $time }
facts-next = { $question }, { $answer }
