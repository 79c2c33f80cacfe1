# Not checked by a native speaker.

grades-england = England
grades-ccss = Common Core
grades-caps = Südafrika
grades-acara = Australien

grades-name = { $grade }, { $curriculum }

grades-title = { $class }: übliche Schritte
grades-now = Jetzt: { $grade }.
grades-none = Jetzt: keine Klassenstufe, alle Schritte gleich.
grades-only-sorts = Das sortiert nur die angezeigten Schritte: Es gilt der Lehrplan Ihrer Schule.
grades-which-curriculum = Welcher Lehrplan kommt Ihrem am nächsten?
grades-which = { $curriculum }: welche Klassenstufe?
