# $time is a time in words: half past three. Stands in lists and sentences.
facts-clock = the clock at { $time }
# Counting on by one step: after 95 in fives, 100.
facts-next = { $question }, { $answer }
