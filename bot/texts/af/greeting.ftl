# Not checked by a native speaker.
greeting-ask = Stuur ’n stemboodskap of ’n video van hoogstens { $seconds } sekondes en { $megabytes } MB, of ’n teks van hoogstens { $characters } karakters. Die gesinne kry dit net soos u dit stuur. U sien dit eerste, en niks gaan voor die volgende aand uit nie.
greeting-heading = { $class }: ’n groet van die onderwyser
greeting-none = { $class }: geen groet nie
greeting-none-note = ’n Stemboodskap, ’n kort video of ’n teks van u kan na elke gesin gaan, net voor die oefening.

greeting-title = { $class }: groet
greeting-text-first = ’n Teks, net voor elke gesin se eerste oefening van die week.
greeting-text-every = ’n Teks, net voor elke oefening.
greeting-voice-first = ’n Stemboodskap, net voor elke gesin se eerste oefening van die week.
greeting-voice-every = ’n Stemboodskap, net voor elke oefening.
greeting-video-first = ’n Video, net voor elke gesin se eerste oefening van die week.
greeting-video-every = ’n Video, net voor elke oefening.
greeting-over = Die week is verby: dit gaan nie meer uit nie. Kies ’n ander week om dit weer te stuur.
greeting-from = Vanaf { $first }, totdat u dit verwyder.
greeting-on = Net op { $day }.
greeting-days = Van { $first } tot { $last }, dan eindig dit vanself.
greeting-other-bot = Dit is vir ’n ander rekening van hierdie bot opgeneem en word nie gestuur nie. Stuur dit asseblief weer.
greeting-once = Dit kom een keer per gesin, ook waar twee kinders in die klas is.
greeting-week = Week van { $monday }
greeting-removed = Verwyder. Dit gaan nie meer uit nie.

greeting-use-voice = Moet hierdie stemboodskap die groet van { $class } wees?
greeting-use-video = Moet hierdie video die groet van { $class } wees?
greeting-use-voice-which = Moet hierdie stemboodskap ’n klas se groet wees? Kies die klas.
greeting-use-video-which = Moet hierdie video ’n klas se groet wees? Kies die klas.
greeting-not-used = Nie gebruik nie. Niks is verander nie.
greeting-used = Dit is nou die groet van { $class }. Die gesinne kry dit so:
greeting-gone = Daardie opname wag nie meer nie. Maak “{ $button }” oop om te sien wat gebruik word, of stuur dit weer.

greeting-bad-form = Ek kan stemboodskappe en gewone video’s aanstuur, nie ronde video’s of musieklêers nie.
greeting-bad-seconds = { $seconds ->
    [one] Dit is { $seconds } sekonde lank; ’n groet mag hoogstens { $most } wees.
   *[other] Dit is { $seconds } sekondes lank; ’n groet mag hoogstens { $most } wees.
  }
greeting-bad-megabytes = Dit is omtrent { $megabytes } MB; ’n groet mag hoogstens { $most } wees, want gesinne betaal vir hulle data.
greeting-please-send = Stuur asseblief ’n stemboodskap of ’n video van hoogstens { $seconds } sekondes en { $megabytes } MB, of ’n teks van hoogstens { $characters } karakters.
greeting-long = { $typed } het { $length } karakters; ’n groet het 1 tot { $most }. Stuur asseblief ’n korter een.
greeting-empty = Ek kon geen woorde daarin sien nie. { $send }
greeting-not-passed = Die kletsdiens laat my nie toe om dit aan te stuur nie. Neem dit asseblief weer op en stuur dit.
greeting-not-sent = { $class }: u groet is nie gestuur nie
greeting-not-sent-why = Dit is vir ’n ander rekening van hierdie bot opgeneem, en ek kan dit nie aanstuur nie. Die oefeninge het soos gewoonlik uitgegaan.
greeting-not-sent-again = Stuur dit asseblief nog een keer: /class, dan “{ $button }”.
