# Not checked by a native speaker.
class-news-ended = Die oefening in { $class } is verby.
class-news-no-more = Daar kom nie meer oefeninge vir { $children } nie. U hoef niks te doen nie.
class-news-thanks = Dankie vir elke aand. Vrae? Vra asseblief die klasonderwyser.
class-news-resumed = Die oefening in { $class } gaan tog voort.
class-news-as-before = Die oefeninge vir { $children } kom soos voorheen. Die vorige boodskap was ’n fout.

class-news-archived = { $class } is deur die hoofonderwyser van die klas geargiveer.
class-news-archived-undo = Niks word meer na gesinne gestuur nie. Vir een dag kan enige onderwyser van die klas dit terugneem: /undo.
class-news-back = { $class } is terug: dit is per ongeluk geargiveer.
class-news-goes-on = Alles gaan voort.

class-news-new-lead = { $class } het ’n nuwe hoofonderwyser.
class-news-link-used = U skakel is gebruik. U bly as mede-onderwyser; om die klas te verlaat, stuur /class en tik op “{ $teachers }”.
