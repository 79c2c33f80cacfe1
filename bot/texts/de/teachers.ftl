# Not checked by a native speaker.
teachers-title = { $class }: Lehrkräfte
teachers-alone = Nur Sie.
teachers-you-lead = Sie und { $others } weitere. Sie sind die leitende Lehrkraft.
teachers-you-co = Sie und { $others } weitere. Sie unterrichten mit.
teachers-open-lead = Ein Link zum Übergeben der Klasse ist offen bis { $day }.
teachers-open-co = Ein Link für eine weitere Lehrkraft ist offen bis { $day }.
teachers-lead-can = Jede Lehrkraft sieht und macht alles. Einladen, Entfernen und Archivieren ist Sache der leitenden Lehrkraft.
teachers-co-can = Sie sehen und machen hier alles. Einladen, Entfernen und Archivieren ist Sache der leitenden Lehrkraft.
teachers-no-names = Namen werden nicht gespeichert: Weitere Lehrkräfte unterscheidet der Tag, an dem sie dazukamen.

teachers-link-lead = Zum Übergeben von { $class }
teachers-link-co = Für eine weitere Lehrkraft in { $class }
teachers-link-once = Für eine Person, einmal, innerhalb von { $days } Tagen. Ich zeige ihn nur jetzt.
teachers-link-note-lead = Wer ihn öffnet, wird die leitende Lehrkraft. Sie bleiben als weitere Lehrkraft, bis Sie die Klasse verlassen.
teachers-link-note-co = Wer ihn öffnet, sieht Spitznamen und Ergebnisse der Kinder: Geben Sie ihn mit Bedacht weiter.
teachers-link-made = Inzwischen wurde ein Link erstellt; er steht weiter unten. Kam keiner, tippen Sie noch einmal.

teachers-remove = ✗ Lehrkraft { $number }, seit { $day }
teachers-removed = Entfernt. Diese Lehrkraft sieht nichts mehr von der Klasse.
teachers-leave = { $class } verlassen?
teachers-leave-note = Sie sehen sie dann nicht mehr und bekommen keinen Wochenbericht. Die Klasse läuft weiter. Zum Zurückkommen brauchen Sie einen neuen Link der leitenden Lehrkraft.
teachers-left = Sie haben die Klasse verlassen.

teachers-archived = { $class } ist archiviert.
teachers-archived-now = Es wird nichts mehr verschickt, auch nicht die Übungen von heute Abend. In einer Stunde erfährt jede Familie einmal, dass das Üben aufhört.
teachers-archived-undo = „{ $undo }“ holt alles zurück, einen Tag lang. Bevor die Stunde um ist, erfährt niemand davon. Nach { $days } Tagen werden die Daten der Kinder gelöscht.

teachers-joined-lead = Sie unterrichten jetzt { $class }, als leitende Lehrkraft.
teachers-joined-co = Sie unterrichten jetzt { $class }, als weitere Lehrkraft.
teachers-joined-note-lead = Wer sie Ihnen übergeben hat, bleibt als weitere Lehrkraft, bis er oder sie die Klasse verlässt.
teachers-joined-note-co = Sie können hier alles außer Einladen, Entfernen und Archivieren. Der Wochenbericht kommt auch zu Ihnen.

teachers-classes = Ihre Klassen
teachers-classes-none = Im Moment keine. Legen Sie eine an oder öffnen Sie den Link einer Kollegin oder eines Kollegen.
teachers-classes-page = { $classes } Klassen. Seite { $page } von { $pages }.
teachers-by-invitation = Hier braucht eine Lehrkraft eine Einladung. Fragen Sie, wer diesen Bot betreibt, oder bitten Sie jemanden aus dem Kollegium um einen Link zur Klasse.
