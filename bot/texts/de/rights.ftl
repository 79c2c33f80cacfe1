# Not checked by a native speaker.
rights-erasing-for-helper = Alles, was über { $child } gespeichert ist, wird gelöscht.
rights-another-asked = Eine andere Begleitperson hat darum gebeten. Es kommen keine Übungen mehr.
rights-until-then = Wer darum gebeten hat, kann es einen Tag lang zurücknehmen. Bis dahin schickt Ihnen /mydata eine Kopie.
rights-kept-for-helper = { $child } wird doch nicht gelöscht.
rights-took-it-back = Der Wunsch wurde zurückgenommen. Die Übungen kommen wie bisher.

rights-erasing-for-teacher = Nr. { $number } aus { $class } wird gelöscht, wie die Familie es wünscht.
rights-off-the-list = Das Kind steht nicht mehr auf der Liste. In einem Tag ist alles über das Kind gelöscht; Sie müssen nichts tun.
rights-kept-for-teacher = Nr. { $number } aus { $class } steht wieder auf der Liste.
rights-family-took-back = Die Familie hat ihren Wunsch zurückgenommen. Es ging nichts verloren.

rights-data-of = Alles, was über { $child } gespeichert ist
rights-two-files = Die Tabelle lässt sich als Kalkulationstabelle öffnen; die andere Datei enthält dasselbe für Programme (JSON).
rights-chat-is-yours = Die Nachrichten in diesem Chat gehören Ihnen; ob Sie sie löschen, entscheiden Sie.

rights-which-child = Löschen, was über ein Kind gespeichert ist
rights-whose = Um wen geht es? Sie begleiten { $children }.
rights-ask = Alles über { $child } löschen?
rights-ask-at-once = Sofort: keine Übungen mehr, an keine Begleitperson. Das Kind steht nicht mehr auf der Klassenliste.
rights-ask-after-a-day = Nach einem Tag: Spitzname, Ergebnisse, Seiten, Einverständnisse und Ihr Konto hier werden endgültig gelöscht.
rights-ask-others = Andere Begleitpersonen und die Lehrkraft erfahren es, ohne Gründe. Papier und Chatnachrichten werden nicht gelöscht.
rights-ask-copy = Möchten Sie vorher eine Kopie? Senden Sie /mydata.

rights-erasing = { $child } wird gelöscht.
rights-gone-in-a-day = Es wird nichts mehr gesendet. In einem Tag ist alles weg.
rights-undo = Bis dahin holt „{ $undo }“ alles zurück, und /mydata schickt eine Kopie.
rights-erasing-already = { $child } wird bereits gelöscht.
rights-only-they = Eine andere Begleitperson hat darum gebeten. Nur sie kann es zurücknehmen, einen Tag lang.
rights-copy-until-then = Bis dahin schickt Ihnen /mydata eine Kopie.
rights-stays = { $child } bleibt.
rights-nothing-lost = Es ging nichts verloren. Die Übungen kommen wie bisher.
rights-not-erased = Es wurde nichts geändert.
rights-nothing-held = Für Sie ist hier nichts über ein Kind gespeichert. Wenn Sie ein Kind begleiten, öffnen Sie zuerst Ihren Link.

rights-operator-erased = Das Kind { $child } wurde gelöscht, dazu jede Begleitperson ohne ein anderes Kind.
rights-operator-no-child = Es gibt kein Kind { $child }. Es wurde nichts geändert.
