# Not checked by a native speaker.

own-way-title = { $child }: nur für dieses Kind
own-way-no-plan = Es gilt noch kein Wochenplan.
own-way-untimed = Ohne Zeitvorgabe: Karten kommen als Bild, nie als Clip.
own-way-from-next = Ab dem nächsten Abend. Die Familie und die Lehrkräfte der Klasse sehen es, sonst niemand.

own-way-part = { $part }, { $amount }
own-way-instead = { $part }, { $amount }, statt: { $before }
own-way-no-easier = { $part }, { $amount } (kein leichterer Schritt vorhanden)
own-way-no-harder = { $part }, { $amount } (kein schwererer Schritt vorhanden)

own-way-only = Nur für dieses Kind: { $changes }
own-way-easier = leichtere Schritte
own-way-harder = schwerere Schritte
own-way-fewer = weniger Karten
own-way-no-timing = ohne Zeitvorgabe
