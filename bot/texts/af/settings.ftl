# Not checked by a native speaker.
settings-title = U instellings
settings-child = { $name }: { $days } om { $time }. { $practised }
settings-child-pace = { $name }: { $pace }. { $practised }
settings-more-children = { $count ->
    [one] En nog een kind.
   *[other] En nog { $count } kinders.
  }
settings-data = Hierdie maand aan u gestuur: omtrent { $amount }. U foon het dalk meer of minder gelaai.
settings-scope = Die skakelaars geld net vir hierdie foon; die tyd geld vir die gesin.
settings-commands = Nog: /language, /share, /mydata, /erase, /stop
settings-kilobytes = { $amount } kB
settings-megabytes = { $amount } MB
settings-time = Oefening om { $time }
settings-way = Hoe kaarte gewys word
settings-days = Watter dae
settings-pause = Pouse
settings-back = Na die instellings
settings-switch-bigger = Groter letters
settings-switch-noTiming = Geen sekondes
settings-switch-quiet = Sonder geluid
settings-switch-clockAid = Horlosie verduidelik
settings-switch-monthly = Maandelikse prent
settings-on-bigger = Groter letters, vanaf die volgende skerm.
settings-on-noTiming = Geen video en geen sekondes, vanaf die volgende skerm.
settings-on-quiet = Wat vanself kom, maak van nou af geen geluid nie.
settings-on-clockAid = Antwoorde op horlosies word met ’n tekening verduidelik.
settings-on-monthly = Met die maand se laaste aand kry u ’n prent van u kind se eie aande.
settings-off-bigger = Weer gewone letters, vanaf die volgende skerm.
settings-off-noTiming = Kaarte kom weer teen die klas se pas.
settings-off-quiet = Boodskappe kom soos u foon gestel is.
settings-off-clockAid = Horlosies weer sonder die tekening.
settings-off-monthly = Geen maandelikse prent nie.
settings-sibling-ask = Vanaf watter ouderdom mag ’n broer of suster help?
settings-sibling-now = Nou vanaf { $age }. Dit is u skool se keuse en word gesê vir wie ook al aansluit; niemand wat reeds aangesluit het, word uitgesit nie.
settings-sibling = Ouderdom van broer of suster
