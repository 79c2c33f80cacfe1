# Not checked by a native speaker.
report-strands = Wat geoefen is
report-weeks = deel reg, week vir week
report-dots = ’n kolletjie vir elke aand geoefen
report-steps = Klein volgende stappe
report-not-said = Wat hierdie bladsy nie sê nie
report-page = bladsy { $page } van { $of }
report-child = kind { $number }
report-the-child = Hierdie kind
report-foot = Gemaak op { $day } uit wat die gesin tuis gemerk het.

report-lead = { $days ->
    [one] { $name } het op { $practised } van { $days } skooldag tuis hoofrekene geoefen, van { $first } tot { $last }.
   *[other] { $name } het op { $practised } van { $days } skooldae tuis hoofrekene geoefen, van { $first } tot { $last }.
  }
report-lead-none = { $name } het in hierdie weke geen gemerkte aand nie, dus is daar nog niks te vertel nie.
report-pages-done = { $count ->
    [one] { $count } werkboekbladsy is gedoen.
   *[other] { $count } werkboekbladsye is gedoen.
  }

report-secure = Ken dit goed: { $steps }.
report-in_between = Op pad: { $steps }.
report-not_yet = Het nog tyd nodig: { $steps }.
report-too_few = Pas begin, te vroeg om te sê: { $steps }.
report-meeting = { $name } leer nog ken: { $facts }.

report-say-together = Sê dit een keer per dag saam hardop: { $facts }.
report-go-on = Gereed vir wat volgende kom: { $step }.
report-as-now = Gaan voort soos nou: ’n paar minute, met rus wanneer ’n dag lank was.

report-no-test = Dit is nie ’n toets of ’n diagnose nie. Dit sê nie hoe slim ’n kind is nie.
report-compared = { $name } word met niemand vergelyk nie: elke reël gaan net oor die kind se eie aande.
report-whose-word = Wat reg was, is wat die gesin gemerk het. ’n Aand sonder merke is onbekend; dit is nie ’n nul nie.

report-six-weeks = Laaste 6 weke
report-twelve-weeks = Laaste 12 weke
report-since-start = Van die begin af

report-choose-class = { $title }: verslae
report-choose-child = { $title }: verslag oor { $name }
report-every-child = Een PDF met ’n bladsy of twee vir elke kind, in woorde wat ’n ouer kan lees.
report-one-child = ’n PDF van ’n bladsy of twee, in woorde wat ’n ouer kan lees.
report-own-evenings = Dit gaan oor die kind se eie aande: geen ander kind kom daarin voor nie, en daar is geen rangorde nie.
report-choose-span = Kies hoe ver dit teruggaan en maak dit dan.
report-sent-one = Die verslag. Lees dit asseblief voordat u dit aangee.
report-sent = Verslae oor { $children } kinders, elkeen op sy eie bladsye. Lees dit asseblief voordat u dit uitdeel, en gee elke gesin net hulle eie.
report-nobody = Daar is nog geen kinders in hierdie klas nie, dus is daar niks om oor verslag te doen nie.
