# Not checked by a native speaker.
family-notice-heading = { $child } · { $class }
family-notice-what = ’n Paar minute se hoofrekene elke skooldag. U lees of wys die kaarte, die kind antwoord hardop, u tik wat gemis is.
family-notice-kept = Wat bewaar word
family-notice-kept-what = Die bynaam, watter kaarte reg was, en die werkboekbladsye. Geen volle naam, verjaarsdag, foto of adres nie. Van u: hierdie kletsrekening en u instellings.
family-notice-seen = Wie dit sien
family-notice-seen-by = U, die kind se ander helpers en die onderwysers van die klas. Geen ander gesin nie. Die onderwysers sien nie u rekening nie.
family-notice-long = Hoe lank
family-notice-how-long = Uitslae vir 13 maande. Alles tot 30 dae nadat die kind die klas verlaat het. Die skool besluit; plaaslike wette geld.
family-notice-choice = U keuse, enige tyd
family-notice-commands = /stop beëindig die boodskappe, /mydata stuur vir u ’n kopie, /erase vee alles uit. Niemand vra hoekom nie.
family-notice-snapshot = ’n Telling wys net een aand; dit is nie ’n oordeel oor ’n kind nie.

family-disagreed = Dis reg so. Niks is bewaar nie. Die skakel bly geldig as u van plan verander.
family-joined = U is nou { $child } se helper.
family-when = Die oefening kom { $days } om { $time }. Pas ’n ander tyd beter? Stuur byvoorbeeld /time 18:00.
family-how-to-go-on = Stuur /today om vandag se oefening weer te sien en /stop om hiermee op te hou.

family-hello = Hallo.
family-what-this-is = Hierdie bot bring ’n paar minute se hoofrekene na kinders van klasse wat dit gebruik.
family-for-helpers = Helpers: maak die skakel van die klasonderwyser oop, of stuur vir my die kode op u briefie.
family-teachers-teach = Onderwysers: stuur /teach om te begin.
family-teachers-ask = Onderwysers: vra ’n uitnodiging by die persoon wat hierdie bot bestuur.

family-nothing-today = { $child }: nog geen oefening vandag nie. Dit kom { $days } om { $time }.
family-practice-stopped = Die oefening vir { $children } het opgehou. Vra asseblief die skool daaroor; /stop beëindig steeds u deel.
family-time-set = Die oefening kom nou om { $time }. As dit vir vandag verby is, begin dit môre.
family-time-missing = Sit asseblief ’n tyd by.
family-time-bad = { $typed } is nie ’n tyd wat ek kan gebruik nie.
family-time-how = Stuur ’n tyd van { $from } tot { $to }, so: /time 18:15
family-too-late = Dit is al { $now }: geen herinnering ná { $latest } nie. Begin vanaand wanneer dit pas.

family-ask-to-leave = Hou op om { $children } te help?
family-leaving-means = Geen boodskappe kom meer nie, en u toestemming is teruggetrek. Om weer aan te sluit, maak u skakel weer oop of vra die onderwyser vir ’n nuwe een.
family-leaving-keeps = Wat gemerk is, bly by die klas. Moet dit ook uitgevee word? Stuur dan eerder /erase: dit kan nie meer nadat u opgehou het nie.
family-left = Klaar. Geen boodskappe kom meer nie. Dankie vir die tyd wat u gegee het.
family-staying = Goed. Alles bly soos dit was.
family-helps-nobody = U help geen kind hier nie. Wat u as onderwyser doen, is onder /class en gaan voort.
