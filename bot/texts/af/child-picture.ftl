# Not checked by a native speaker.
child-picture-evenings = { $count ->
    [one] { $count } aand in twaalf weke
   *[other] { $count } aande in twaalf weke
  }
child-picture-footer = Net hierdie kind se eie aande. Die stawe wys hoeveel reg was soos die helper dit gemerk het; ’n kort strepie is ’n week sonder merke.
child-picture-sent = { $child }: net eie aande, met niemand anders s’n vergelyk nie.
child-picture-none = Daar is nog niks om te teken nie: geen aand van hierdie kind is in die afgelope twaalf weke gemerk nie.
