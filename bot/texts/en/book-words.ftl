# When a workbook will be done.
book-words-done = done
# $day is a short date.
book-words-about = about { $day }
book-words-never = in more than a year
