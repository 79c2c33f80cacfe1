# Not checked by a native speaker.
help-first-class = Legen wir Ihre erste Klasse an.
help-first-class-takes = Das dauert etwa drei Minuten: ein Name, eine Zeitzone und die Spitznamen der Kinder. Alles lässt sich später ändern.

help-stage-no_children = Als Nächstes: Fügen Sie die Kinder hinzu. Senden Sie die Spitznamen, einen pro Zeile, oder eine Datei.
help-stage-no_plan = Als Nächstes: Wählen Sie, was geübt wird. Sie können mit den üblichen Schritten der Stufe anfangen.
help-stage-nobody_joined = Als Nächstes: Geben Sie jeder Familie ihren Zettel. Sobald jemand dabei ist, beginnen die Übungen von selbst.
help-running = Alles läuft. Die nächste Übung kommt am { $day } um { $time } Uhr.
help-waiting = { $children ->
    [one] { $children } Kind hat noch keine Begleitperson: Neue Zettel gibt es unter „{ $print }“.
   *[other] { $children } Kinder haben noch keine Begleitperson: Neue Zettel gibt es unter „{ $print }“.
  }
help-classes = Sie haben { $classes } Klassen.
help-which-class = Um welche geht es?
help-command-class = /class · Plan, Kinder, freie Tage, Wochenbericht
help-command-newclass = /newclass · noch eine Klasse
help-command-undo = /undo · eine Änderung des letzten Tages zurücknehmen

help-you-help = Sie begleiten { $children }.
help-drill-here = { $child }: Die Übung von heute ist da, /today zeigt sie.
help-drill-comes = { $child }: Die Übung kommt von selbst, { $days } um { $time } Uhr.
help-command-today = /today · die Übung von heute noch einmal
help-command-time = /time 18:00 · eine andere Zeit, ab dem nächsten Abend
help-command-show = /show · Clip, Bilder oder nur Text, für weniger Daten; /settings · alles andere
help-command-stop = /stop · sofort beenden; /mydata und /erase · eine Kopie, oder nichts behalten
help-not-asked = Ich habe gerade keine Nachricht erwartet und deshalb nichts geändert.

help-still-waiting = Ich warte noch auf eine Antwort.
help-awaited-new_title = Senden Sie den Namen der neuen Klasse oder tippen Sie auf „{ $cancel }“.
help-awaited-new_zone = Senden Sie die Zeitzone der neuen Klasse, zum Beispiel Europe/London, oder tippen Sie auf „{ $cancel }“.
help-awaited-title = Senden Sie den neuen Namen der Klasse oder tippen Sie auf „{ $cancel }“.
help-awaited-zone = Senden Sie die Zeitzone der Klasse, zum Beispiel Europe/London, oder tippen Sie auf „{ $cancel }“.
help-awaited-roster = Senden Sie die Spitznamen der Kinder, einen pro Zeile, oder eine Datei, oder tippen Sie auf „{ $cancel }“.
help-awaited-evening = Senden Sie die Uhrzeit der Übung, zum Beispiel 17:30, oder tippen Sie auf „{ $cancel }“.
help-awaited-nudge = Senden Sie die Uhrzeit der Erinnerung, zum Beispiel 19:00, oder tippen Sie auf „{ $cancel }“.
help-awaited-digest = Senden Sie die Uhrzeit Ihres Wochenberichts, zum Beispiel 20:00, oder tippen Sie auf „{ $cancel }“.
help-awaited-break = Senden Sie die freien Tage und ihren Namen oder tippen Sie auf „{ $cancel }“.
help-awaited-greeting = Senden Sie Ihren Gruß: einen Text, eine Sprachnachricht oder ein Video, oder tippen Sie auf „{ $cancel }“.
help-awaited-book_new = Senden Sie das Arbeitsheft: Titel, erste und letzte Seite und die Seiten am Tag, oder tippen Sie auf „{ $cancel }“.
help-awaited-book_change = Senden Sie das Arbeitsheft neu: Titel, erste und letzte Seite und die Seiten am Tag, oder tippen Sie auf „{ $cancel }“.
help-awaited-book_page = Senden Sie die Seite im Arbeitsheft oder „fertig“, oder tippen Sie auf „{ $cancel }“.
help-awaited-nickname = Senden Sie den neuen Spitznamen des Kindes oder tippen Sie auf „{ $cancel }“.
help-awaited-pause = Senden Sie den Tag, an dem die Übung wieder kommen soll, zum Beispiel 12. Oktober, oder tippen Sie auf „{ $cancel }“.
help-awaited-recording = Tippen Sie oben an, wofür Ihre Aufnahme ist, oder tippen Sie auf „{ $cancel }“.
help-awaited-file = Tippen Sie oben an, für welche Klasse Ihre Liste ist, oder tippen Sie auf „{ $cancel }“.
help-awaited-file_list = Tippen Sie oben, um die Kinder Ihrer Liste hinzuzufügen, oder tippen Sie auf „{ $cancel }“.
