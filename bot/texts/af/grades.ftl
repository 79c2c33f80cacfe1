# Not checked by a native speaker.

grades-england = Engeland
grades-ccss = Common Core
grades-caps = Suid-Afrika
grades-acara = Australië

grades-name = { $grade }, { $curriculum }

grades-title = { $class }: gewone stappe
grades-now = Nou: { $grade }.
grades-none = Nou: geen graad nie, alle stappe tel ewe veel.
grades-only-sorts = Dit sorteer net die stappe wat gewys word: die skool se eie kurrikulum besluit.
grades-which-curriculum = Watter kurrikulum kom die naaste aan u s’n?
grades-which = { $curriculum }: watter graad?
