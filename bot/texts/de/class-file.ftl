# Not checked by a native speaker.
class-file-big = Diese Datei ist zu groß für eine Klassenliste: höchstens 1 MB, und sonst nichts darin.
class-file-rows = Eine Klassenliste hat hier höchstens 500 Zeilen, eine Klasse höchstens { $most } Kinder.
class-file-columns = Eine Klassenliste hat hier höchstens 40 Spalten. Behalten Sie nur die Spalte mit den Spitznamen.
class-file-old = Das ist eine Tabelle in einem alten Format, oder sie ist mit einem Passwort geschützt.
class-file-unknown = Diese Datei kann ich nicht als Klassenliste lesen.
class-file-empty = In dieser Datei steht nichts.
class-file-quote = Zeile { $row }: Ein Anführungszeichen steht falsch oder ist nicht geschlossen.
class-file-send = Nichts wurde hinzugefügt. Senden Sie eine XLSX- oder CSV-Datei mit einem Spitznamen pro Zeile, oder fügen Sie die Spitznamen als Text ein, einen pro Zeile.

class-file-which-class = Für welche Klasse ist diese Liste?
class-file-see-first = Sie sehen die Spitznamen, bevor sie hinzugefügt werden.

class-file-nicknames = { $count ->
    [one] { $count } Spitzname für { $class }
   *[other] { $count } Spitznamen für { $class }
  }
class-file-column = Spalte { $letter }
class-file-column-headed = Spalte { $letter } { $heading }
class-file-preview = { $column }: { $names }
class-file-until-tap = Hinzugefügt wird erst, wenn Sie auf den Knopf tippen.

class-file-problems = Noch kann nichts hinzugefügt werden.
class-file-problems-in = { $column }:
class-file-mend = Verbessern Sie die Datei und senden Sie sie noch einmal, oder tippen Sie auf „{ $button }“.
class-file-no-names = { $column }: Dort sind keine Spitznamen.
class-file-no-names-do = Tippen Sie auf „{ $button }“ oder senden Sie eine andere Datei.
class-file-too-many = { $sent ->
    [one] Das ist { $sent } Spitzname; mit den { $present }, die schon da sind, werden es mehr als { $most }.
   *[other] Das sind { $sent } Spitznamen; mit den { $present }, die schon da sind, werden es mehr als { $most }.
  }
class-file-shorten = Nichts wurde hinzugefügt. Kürzen Sie die Datei und senden Sie sie noch einmal, oder legen Sie eine zweite Klasse an.

class-file-which-column = In welcher Spalte stehen die Spitznamen?
class-file-names-only = Je höchstens { $most } Zeichen, keine Nachnamen.
class-file-column-button = { $letter }: { $shown }
class-file-column-empty = { $letter }: leer
class-file-add = { $count ->
    [one] Dieses Kind hinzufügen
   *[other] Alle { $count } hinzufügen
  }
class-file-gone = Diese Liste wartet nicht mehr: Sie wurde hinzugefügt, oder etwas anderes kam danach. Sehen Sie unter „{ $button }“ nach oder senden Sie die Datei noch einmal.
