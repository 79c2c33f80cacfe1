# Not checked by a native speaker.
class-file-big = Daardie lêer is te groot vir ’n klaslys: hoogstens 1 MB, en niks anders daarin nie.
class-file-rows = ’n Klaslys mag hier hoogstens 500 rye hê; ’n klas het hoogstens { $most } kinders.
class-file-columns = ’n Klaslys mag hier hoogstens 40 kolomme hê. Hou net die kolom met byname.
class-file-old = Dit is ’n sigblad in ’n ou formaat, of met ’n wagwoord gesluit.
class-file-unknown = Ek kan daardie lêer nie as ’n klaslys lees nie.
class-file-empty = Daar is niks in daardie lêer nie.
class-file-quote = Ry { $row }: ’n aanhalingsteken staan op die verkeerde plek, of is nie gesluit nie.
class-file-send = Niks is bygevoeg nie. Stuur ’n XLSX- of CSV-lêer met een bynaam in elke ry, of plak die byname as teks, een per reël.

class-file-which-class = Vir watter klas is hierdie lys?
class-file-see-first = U sien die byname voordat enige bygevoeg word.

class-file-nicknames = { $count ->
    [one] { $count } bynaam vir { $class }
   *[other] { $count } byname vir { $class }
  }
class-file-column = Kolom { $letter }
class-file-column-headed = Kolom { $letter } { $heading }
class-file-preview = { $column }: { $names }
class-file-until-tap = Niks word bygevoeg voordat u op die knoppie tik nie.

class-file-problems = Nog niks kan bygevoeg word nie.
class-file-problems-in = { $column }:
class-file-mend = Maak die lêer reg en stuur dit weer, of tik op “{ $button }”.
class-file-no-names = { $column }: geen byname daar nie.
class-file-no-names-do = Tik op “{ $button }”, of stuur ’n ander lêer.
class-file-too-many = { $sent ->
    [one] Dit is { $sent } bynaam; saam met die { $present } wat reeds daar is, is dit meer as { $most }.
   *[other] Dit is { $sent } byname; saam met die { $present } wat reeds daar is, is dit meer as { $most }.
  }
class-file-shorten = Niks is bygevoeg nie. Maak die lêer korter en stuur dit weer, of maak ’n tweede klas.

class-file-which-column = Watter kolom het die byname?
class-file-names-only = Hoogstens { $most } karakters elk, geen vanne nie.
class-file-column-button = { $letter }: { $shown }
class-file-column-empty = { $letter }: leeg
class-file-add = { $count ->
    [one] Voeg hierdie kind by
   *[other] Voeg al { $count } by
  }
class-file-gone = Hierdie lys wag nie meer nie: dit is bygevoeg, of iets anders het ná dit gekom. Kyk onder “{ $button }”, of stuur die lêer weer.
