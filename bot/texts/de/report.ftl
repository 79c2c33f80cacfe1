# Not checked by a native speaker.
report-strands = Was geübt wurde
report-weeks = Anteil richtig, Woche für Woche
report-dots = ein Punkt für jeden Abend, an dem geübt wurde
report-steps = Kleine nächste Schritte
report-not-said = Was diese Seite nicht sagt
report-page = Seite { $page } von { $of }
report-child = Kind { $number }
report-the-child = Dieses Kind
report-foot = Erstellt am { $day } aus dem, was die Familie zu Hause angetippt hat.

report-lead = { $days ->
    [one] { $name } hat vom { $first } bis { $last } an { $practised } von { $days } Schultag zu Hause Kopfrechnen geübt.
   *[other] { $name } hat vom { $first } bis { $last } an { $practised } von { $days } Schultagen zu Hause Kopfrechnen geübt.
  }
report-lead-none = { $name } hat aus diesen Wochen keinen Abend mit Angaben; darum lässt sich noch nichts sagen.
report-pages-done = { $count ->
    [one] { $count } Seite im Arbeitsheft wurde erledigt.
   *[other] { $count } Seiten im Arbeitsheft wurden erledigt.
  }

report-secure = Sitzt gut: { $steps }.
report-in_between = Auf dem Weg: { $steps }.
report-not_yet = Braucht noch Zeit: { $steps }.
report-too_few = Erst begonnen, für ein Urteil zu früh: { $steps }.
report-meeting = { $name } lernt noch kennen: { $facts }.

report-say-together = Das einmal am Tag zusammen laut sprechen: { $facts }.
report-go-on = Bereit für das, was als Nächstes kommt: { $step }.
report-as-now = Weiter wie jetzt: ein paar Minuten, mit einer Pause, wenn der Tag lang war.

report-no-test = Das ist kein Test und keine Diagnose. Es sagt nicht, wie klug ein Kind ist.
report-compared = { $name } wird mit niemandem verglichen: Jede Zeile handelt nur von den eigenen Abenden.
report-whose-word = Richtig ist, was die Familie als richtig angetippt hat. Von einem Abend ohne Angaben weiß man nichts; er ist keine Null.

report-six-weeks = Letzte 6 Wochen
report-twelve-weeks = Letzte 12 Wochen
report-since-start = Seit dem Anfang

report-choose-class = { $title }: Berichte
report-choose-child = { $title }: Bericht über { $name }
report-every-child = Ein PDF mit ein bis zwei Seiten für jedes Kind, in Worten, die Eltern verstehen.
report-one-child = Ein PDF von ein bis zwei Seiten, in Worten, die Eltern verstehen.
report-own-evenings = Es geht um die eigenen Abende des Kindes: kein anderes Kind kommt vor, und es gibt keine Rangliste.
report-choose-span = Wählen Sie, wie weit er zurückreicht, und erstellen Sie ihn dann.
report-sent-one = Der Bericht. Bitte lesen Sie ihn, bevor Sie ihn weitergeben.
report-sent = Berichte über { $children } Kinder, jeder auf eigenen Seiten. Bitte lesen Sie sie, bevor Sie sie weitergeben, und geben Sie jeder Familie nur ihren eigenen.
report-nobody = In dieser Klasse sind noch keine Kinder; es gibt nichts zu berichten.
