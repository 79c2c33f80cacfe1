# A list of children sent as a file.
class-file-big = That file is too large for a class list: at most 1 MB, and nothing else in it.
class-file-rows = A class list has at most 500 rows here; a class has at most { $most } children.
class-file-columns = A class list has at most 40 columns here. Keep the column of nicknames.
class-file-old = That is a spreadsheet in an old format, or locked with a password.
class-file-unknown = I cannot read that file as a class list.
class-file-empty = There is nothing in that file.
class-file-quote = Row { $row }: a quotation mark is out of place, or not closed.
class-file-send = Nothing was added. Send an XLSX or CSV file with one nickname in each row, or paste the nicknames as text, one a line.

class-file-which-class = For which class is this list?
class-file-see-first = You see the nicknames before any are added.

# What would be added. $class is a class's title, $column is one of the two below.
class-file-nicknames = { $count ->
    [one] { $count } nickname for { $class }
   *[other] { $count } nicknames for { $class }
  }
# $letter is a column's letter, $heading its heading in quotation marks.
class-file-column = Column { $letter }
class-file-column-headed = Column { $letter } { $heading }
class-file-preview = { $column }: { $names }
class-file-until-tap = Nothing is added until you tap the button.

class-file-problems = Nothing can be added yet.
class-file-problems-in = { $column }:
# $button is the label of a button: Another column.
class-file-mend = Mend the file and send it again, or tap { $button }.
class-file-no-names = { $column }: no nicknames there.
class-file-no-names-do = Tap { $button }, or send another file.
class-file-too-many = { $sent ->
    [one] That is { $sent } nickname; with the { $present } already there it is more than { $most }.
   *[other] That is { $sent } nicknames; with the { $present } already there it is more than { $most }.
  }
class-file-shorten = Nothing was added. Shorten the file and send it again, or make a second class.

class-file-which-column = Which column has the nicknames?
class-file-names-only = At most { $most } characters each, no surnames.
# A column's button; $shown are its heading and its first nickname.
class-file-column-button = { $letter }: { $shown }
class-file-column-empty = { $letter }: empty
class-file-add = { $count ->
    [one] Add this child
   *[other] Add all { $count }
  }
# $button is the label of a button: Children.
class-file-gone = This list is not waiting any more: it was added, or something else came after it. Look under { $button }, or send the file again.
