# Not checked by a native speaker.
family-notice-heading = { $child } · { $class }
family-notice-what = Ein paar Minuten Kopfrechnen an jedem Schultag. Sie lesen oder zeigen die Karten, das Kind antwortet laut, Sie tippen an, was noch nicht gewusst wurde.
family-notice-kept = Was gespeichert wird
family-notice-kept-what = Der Spitzname, welche Karten richtig waren, und die Seiten im Arbeitsheft. Kein voller Name, kein Geburtstag, kein Foto, keine Adresse. Von Ihnen: dieses Chat-Konto und Ihre Einstellungen.
family-notice-seen = Wer es sieht
family-notice-seen-by = Sie, weitere Begleitpersonen des Kindes und die Lehrkräfte der Klasse. Keine andere Familie. Die Lehrkräfte sehen Ihr Konto nicht.
family-notice-long = Wie lange
family-notice-how-long = Ergebnisse 13 Monate. Alles bis 30 Tage, nachdem das Kind die Klasse verlassen hat. Die Schule entscheidet; es gilt das Recht vor Ort.
family-notice-choice = Ihre Wahl, jederzeit
family-notice-commands = /stop beendet die Nachrichten, /mydata schickt Ihnen eine Kopie, /erase löscht alles. Niemand fragt, warum.
family-notice-snapshot = Ein Ergebnis zeigt einen Abend; es ist kein Urteil über ein Kind.

family-disagreed = In Ordnung. Es wurde nichts gespeichert. Der Link bleibt gültig, falls Sie es sich anders überlegen.
family-joined = Sie sind jetzt Begleitperson für { $child }.
family-when = Die Übung kommt { $days } um { $time } Uhr. Eine andere Zeit passt besser? Senden Sie zum Beispiel /time 18:00.
family-how-to-go-on = Mit /today sehen Sie die Übung von heute noch einmal, mit /stop beenden Sie alles.

family-hello = Hallo.
family-what-this-is = Dieser Bot bringt ein paar Minuten Kopfrechnen zu Kindern in Klassen, die ihn nutzen.
family-for-helpers = Begleitpersonen: Öffnen Sie den Link von der Lehrkraft oder senden Sie mir den Code auf Ihrem Zettel.
family-teachers-teach = Lehrkräfte: Senden Sie /teach, um anzufangen.
family-teachers-ask = Lehrkräfte: Bitten Sie die Person, die diesen Bot betreibt, um eine Einladung.

family-nothing-today = { $child }: Heute ist noch keine Übung da. Sie kommt { $days } um { $time } Uhr.
family-practice-stopped = Das Üben für { $children } hat aufgehört. Bitte fragen Sie die Schule; /stop beendet weiterhin Ihren Teil.
family-time-set = Die Übung kommt jetzt um { $time } Uhr. Ist das für heute vorbei, beginnt es morgen.
family-time-missing = Bitte geben Sie eine Uhrzeit an.
family-time-bad = { $typed } ist keine Uhrzeit, mit der ich etwas anfangen kann.
family-time-how = Senden Sie eine Uhrzeit von { $from } bis { $to }, so: /time 18:15
family-too-late = Es ist schon { $now } Uhr: keine Erinnerung nach { $latest } Uhr. Fangen Sie heute an, wann es passt.

family-ask-to-leave = { $children } nicht mehr begleiten?
family-leaving-means = Es kommen keine Nachrichten mehr, und Ihr Einverständnis ist zurückgezogen. Um wieder mitzumachen, öffnen Sie Ihren Link noch einmal oder bitten die Lehrkraft um einen neuen.
family-leaving-keeps = Was markiert wurde, bleibt bei der Klasse. Soll es auch gelöscht werden? Dann senden Sie stattdessen /erase: Später ist das nicht mehr möglich.
family-left = Erledigt. Es kommen keine Nachrichten mehr. Danke für Ihre Zeit.
family-staying = Gut. Alles bleibt, wie es war.
family-helps-nobody = Sie begleiten hier kein Kind. Was Sie als Lehrkraft tun, finden Sie unter /class; das geht weiter.
