# Not checked by a native speaker.
sharing-ask = Moet nog ’n volwassene vir { $name } help?
sharing-what = ’n Skakel maak een keer oop, binne { $days } dae. Wie dit oopmaak, lees die kennisgewing en stem in, kry dan { $name } se oefeninge en sien wat gemerk is.
sharing-helpers = { $count ->
    [one] { $name } het nou een helper. Die onderwyser sien die getal, geen naam nie.
   *[other] { $name } het nou { $count } helpers. Die onderwyser sien die getal, geen name nie.
  }
sharing-open = ’n Skakel van u is oop tot { $until }. ’n Nuwe een neem sy plek in.
sharing-not-sibling = ’n Skakel vir nog ’n volwassene kom van ’n ouer of ’n ander volwassene. Vra asseblief een van hulle.
sharing-many = { $name } het { $most } helpers, soveel as wat so moontlik is. Die onderwyser kan nog ’n briefie uitgee.
sharing-week = { $most } skakels per week kan aangegee word, en hierdie week s’n is uitgegee. Die onderwyser kan nog ’n briefie uitgee.
sharing-whom = Vir wie moet nog ’n volwassene help?
sharing-names = U help { $names }.
sharing-link = Vir nog ’n helper van { $name }
sharing-pass-on = Gee hierdie skakel vir een volwassene wat u goed ken, en vir niemand anders nie:
sharing-until = Dit maak een keer oop, tot { $until }. /stop beëindig u eie deel; hulle s’n gaan aan.
sharing-make = Maak die skakel
