# Not checked by a native speaker.

steps-size =
  { $step ->
    [1] in ene
    [2] in twees
    [3] in drieë
    [4] in viere
    [5] in vywe
    [10] in tiene
    [20] in twintigs
    [25] in vyf-en-twintigs
    [50] in vyftigs
    [100] in honderde
   *[other] in stappe van { $step }
  }

steps-like = { $steps } ({ $numbers })

steps-across = { $steps } oor { $number }-tale

steps-label-on = { $steps } tot { $limit }
steps-label-back = terug { $steps } binne { $limit }
steps-whole-on = tel { $steps } tot { $limit }
steps-whole-back = tel terug { $steps } binne { $limit }
steps-limit-on = tot { $limit }
steps-limit-back = terug binne { $limit }

steps-practised = Wat moet geoefen word?
steps-mixed-in = Wat moet ingemeng word?
steps-same-kind = Net wat dieselfde soort antwoord vra, kan saam geskommel word.
steps-which = { $strand }: watter stap?
steps-page = Bladsy { $page } van { $pages }, makliker stappe eerste.
steps-counting-in = Tel: in wat?
steps-how-far = Tel { $steps }: hoe ver?

steps-has-usual = { $sign } het stappe wat gewoon is in { $grade }
steps-usual = { $sign } gewoon in { $grade }
steps-none-usual = Niks hiervan is as gewoon in { $grade } gemerk nie.
