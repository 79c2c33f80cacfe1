# Not checked by a native speaker.
children-none = { $class }: noch keine Kinder
children-joined = { $class }: { $joined } von { $all } dabei
children-waiting = Noch nicht dabei: { $names }
children-left = Begleitperson ist ausgestiegen: { $names }
children-unreached = Nachrichten kommen nicht mehr an: { $names }
children-legend = { $sign } hat eine Begleitperson. Tippen Sie auf ein Kind für einen anderen Namen, eine andere Klasse oder einen neuen Link.
children-more = { $more } weitere

children-helper-left = Die Begleitperson ist ausgestiegen.
children-not-joined = Noch nicht dabei.
children-helpers = { $helpers ->
    [one] { $helpers } Begleitperson
   *[other] { $helpers } Begleitpersonen
  }
children-helpers-unreached = { $helpers ->
    [one] { $helpers } Begleitperson: Nachrichten kommen nicht mehr an
   *[other] { $helpers } Begleitpersonen: Nachrichten kommen nicht mehr an
  }
children-helpers-some = { $helpers } Begleitpersonen, davon { $reachable } erreichbar
children-drill = Übung um { $time } Uhr
children-drill-own = Übung um { $time } Uhr, von der Familie so gewählt

children-link-title = Ein neuer Link für { $child }?
children-link-note = Der Link oder Zettel von vorher gilt dann nicht mehr. Wer schon dabei ist, bleibt dabei.

children-nickname = Wie soll { $child } heißen? Höchstens { $most } Zeichen, kein Nachname.
children-nickname-empty = Darin sehe ich keinen Spitznamen.
children-nickname-long = { $typed } hat { $length } Zeichen, erlaubt sind höchstens { $most }.
children-nickname-again = Bitte senden Sie einen Spitznamen mit 1 bis { $most } Zeichen.
children-renamed = { $before } heißt von jetzt an überall { $now }.

children-move-no-class = Sie haben keine andere Klasse. Legen Sie mit /newclass eine an, dann kann das Kind dorthin wechseln.
children-move-title = In welche Klasse wechselt { $child }?
children-move-note = Begleitpersonen, Ergebnisse und Zettel gehen mit. Eine Übung, die heute schon verschickt ist, bleibt; ab dem nächsten Abend gelten Plan, Zeit und Arbeitsheft der anderen Klasse. Jede Begleitperson erfährt es einmal.
children-moved = { $child } ist jetzt in { $class }, mit der Nummer { $number }.
children-moved-told = Jede Begleitperson erfährt es.
children-moved-no-plan = Diese Klasse hat noch keinen Wochenplan: Dort wird nichts verschickt.

children-archived = { $child } ist archiviert.
children-archived-note = Es kommt keine Übung mehr, und die Zettel gelten nicht mehr. Ergebnisse und Nummer bleiben: „{ $button }“ holt { $child } innerhalb von { $days } Tagen zurück. Danach wird alles gelöscht.
children-archive-list = { $count ->
    [one] { $class }: { $count } archiviertes Kind
   *[other] { $class }: { $count } archivierte Kinder
  }
children-archive-tap = Tippen Sie auf ein Kind, um es zurückzuholen, mit Nummer, Begleitpersonen und Ergebnissen. Die Übungen beginnen mit dem nächsten Abend.
children-back = { $child } steht wieder auf der Liste.
