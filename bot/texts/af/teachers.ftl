# Not checked by a native speaker.
teachers-title = { $class }: onderwysers
teachers-alone = Net u.
teachers-you-lead = U en nog { $others }. U is die hoofonderwyser van die klas.
teachers-you-co = U en nog { $others }. U is ’n mede-onderwyser.
teachers-open-lead = ’n Skakel om die klas oor te gee, is oop tot { $day }.
teachers-open-co = ’n Skakel vir ’n mede-onderwyser is oop tot { $day }.
teachers-lead-can = Elke onderwyser sien en doen alles. Nooi, verwyder en argiveer is vir die hoofonderwyser.
teachers-co-can = U sien en doen alles hier. Nooi, verwyder en argiveer is vir die hoofonderwyser.
teachers-no-names = Geen name word gehou nie: mede-onderwysers word uitgeken aan die dag waarop hulle gekom het.

teachers-link-lead = Om { $class } oor te gee
teachers-link-co = Vir ’n mede-onderwyser van { $class }
teachers-link-once = Vir een persoon, een keer, binne { $days } dae. Ek wys dit net nou.
teachers-link-note-lead = Wie dit oopmaak, word die hoofonderwyser van die klas. U bly as mede-onderwyser totdat u die klas verlaat.
teachers-link-note-co = Wie dit oopmaak, sien die kinders se byname en uitslae: gee dit versigtig aan.
teachers-link-made = Sedert dit gewys is, is ’n skakel gemaak; dit staan verder af. As daar geen is nie, tik nog een keer.

teachers-remove = ✗ Mede-onderwyser { $number }, sedert { $day }
teachers-removed = Verwyder. Hierdie persoon sien niks meer van die klas nie.
teachers-leave = Verlaat { $class }?
teachers-leave-note = U sien dit nie meer nie en kry geen weekoorsig nie. Die klas gaan voort. Om terug te kom, het u ’n nuwe skakel van die hoofonderwyser nodig.
teachers-left = U het die klas verlaat.

teachers-archived = { $class } is geargiveer.
teachers-archived-now = Niks word meer gestuur nie, vanaand se oefeninge ingesluit. Oor ’n uur hoor elke gesin een keer dat die oefening ophou.
teachers-archived-undo = “{ $undo }” bring alles terug, een dag lank. Voordat die uur verby is, hoor niemand daarvan nie. Na { $days } dae word die kinders se data uitgevee.

teachers-joined-lead = U is nou die hoofonderwyser van { $class }.
teachers-joined-co = U is nou mede-onderwyser van { $class }.
teachers-joined-note-lead = As iemand dit aan u oorgegee het, bly daardie persoon as mede-onderwyser totdat hy of sy die klas verlaat.
teachers-joined-note-co = U kan alles hier doen, behalwe nooi, verwyder en argiveer. Die weekoorsig kom ook na u toe.

teachers-classes = U klasse
teachers-classes-none = Op die oomblik geen nie. Maak een, of maak ’n kollega se skakel oop.
teachers-classes-page = { $classes } klasse. Bladsy { $page } van { $pages }.
teachers-by-invitation = Hier het ’n onderwyser ’n uitnodiging nodig. Vra een by die persoon wat hierdie bot bedryf, of vra ’n kollega vir ’n skakel na hulle klas.
