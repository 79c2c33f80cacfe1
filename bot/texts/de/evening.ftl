# Not checked by a native speaker.
evening-heading = { $child } · { $day }
evening-offer = Etwa { $minutes }: { $parts }.
evening-then-pages = Danach { $pages }.
evening-nudge = Heute ist noch Zeit für ein paar Minuten, wenn es passt.
evening-reminder = Hier ist die Erinnerung, um die Sie gebeten haben. Fangen Sie an, wann es passt.
evening-later-at = Eine Erinnerung kommt um { $time } Uhr, wie gewünscht.
evening-not-today = Heute nicht. Das ist völlig in Ordnung.

evening-part = Teil { $part } von { $of }: { $title }
evening-count = Zählen Sie gemeinsam laut: Start bei { $start }, insgesamt { $length ->
    [one] { $length } Zahl
   *[other] { $length } Zahlen
  }. Beim ersten Fehler aufhören.
evening-say = Jede Antwort laut sagen, etwa { $seconds } Sekunden pro Karte. Ohne Eile.
evening-say-untimed = Jede Antwort laut sagen, so lange es eben dauert.
evening-read = Jedes Wort laut lesen und die Zahl zeigen oder schreiben, etwa { $seconds } Sekunden pro Karte. Ohne Eile.
evening-read-untimed = Jedes Wort laut lesen und die Zahl zeigen oder schreiben, so lange es eben dauert.

evening-tap-last = Tippen Sie auf die letzte richtige Zahl.
evening-tap-missed = Tippen Sie auf die Karten, die noch nicht gewusst wurden (✗), dann auf „{ $done }“. Jetzt: { $right } von { $asked }.
evening-ask-pages = { $pages }. Wie viele Seiten wurden geschafft?

evening-part-result = { $part }: { $right } von { $asked }, { $compared }
evening-first-time = zum ersten Mal geübt
evening-better = { $by } mehr als die eigene Bestleistung
evening-same = genau wie die eigene Bestleistung
evening-below = eigene Bestleistung { $best }
evening-own-only = Nur mit den eigenen Abenden dieses Kindes verglichen.
evening-thanks = Danke. Das war gut genutzte Übungszeit.

evening-elsewhere-done = Mit einer anderen Begleitperson geübt.
evening-elsewhere-now = Eine andere Begleitperson markiert das gerade.
evening-closed = Dieser Tag ist vorbei und seine Übung abgeschlossen. Mit /today kommt die von heute.
evening-what-to-change = Was möchten Sie ändern? Was vorher markiert war, bleibt daneben erhalten.
evening-other-message = Weiter geht es in der anderen Nachricht zu diesem Abend.
