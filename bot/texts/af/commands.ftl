# Not checked by a native speaker.
commands-today = Vandag se oefening weer
commands-time = ’n Ander tyd: /time 18:15
commands-show = Videogreep, prente of net woorde
commands-settings = U instellings
commands-language = ’n Ander taal
commands-days = Dae waarop die oefening kom
commands-pause = ’n Pouse van die oefening
commands-share = ’n Skakel vir nog ’n volwassene
commands-class = Onderwysers: u klas
commands-newclass = Onderwysers: skep ’n klas
commands-undo = Onderwysers: neem ’n verandering terug
commands-stop = Stop alle boodskappe
commands-mydata = Wat oor u kind bewaar word
commands-erase = Vee dit uit
commands-help = Wat hierdie bot doen
