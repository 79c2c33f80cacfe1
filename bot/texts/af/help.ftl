# Not checked by a native speaker.
help-first-class = Kom ons skep u eerste klas.
help-first-class-takes = Dit neem omtrent drie minute: ’n naam, ’n tydsone en die kinders se byname. Alles kan later verander word.

help-stage-no_children = Volgende: voeg die kinders by. Stuur hulle byname, een per reël, of ’n lêer.
help-stage-no_plan = Volgende: kies wat geoefen word. U kan met die gewone stappe van die graad begin.
help-stage-nobody_joined = Volgende: gee vir elke gesin sy briefie. Sodra iemand aangesluit het, begin die oefeninge vanself.
help-running = Alles loop. Die volgende oefening gaan { $day } om { $time } uit.
help-waiting = { $children ->
    [one] { $children } kind het nog niemand om te help nie: nuwe briefies is onder “{ $print }”.
   *[other] { $children } kinders het nog niemand om te help nie: nuwe briefies is onder “{ $print }”.
  }
help-classes = U het { $classes } klasse.
help-which-class = Oor watter een gaan dit?
help-command-class = /class · plan, kinders, vakansies, weekoorsig
help-command-newclass = /newclass · nog ’n klas
help-command-undo = /undo · neem ’n verandering van die laaste dag terug

help-you-help = U help { $children }.
help-drill-here = { $child }: vandag se oefening is hier, /today wys dit.
help-drill-comes = { $child }: die oefening kom vanself, { $days } om { $time }.
help-command-today = /today · vandag se oefening weer
help-command-time = /time 18:00 · ’n ander tyd, vanaf die volgende aand
help-command-show = /show · videogreep, prente of net woorde, vir minder data; /settings · alles anders
help-command-stop = /stop · hou dadelik op; /mydata en /erase · ’n kopie, of niks bewaar nie
help-not-asked = Ek het nie nou ’n boodskap verwag nie, so ek het niks verander nie.

help-still-waiting = Ek wag nog vir ’n antwoord.
help-awaited-new_title = Stuur die nuwe klas se naam, of tik op “{ $cancel }”.
help-awaited-new_zone = Stuur die nuwe klas se tydsone, soos Europe/London, of tik op “{ $cancel }”.
help-awaited-title = Stuur die klas se nuwe naam, of tik op “{ $cancel }”.
help-awaited-zone = Stuur die klas se tydsone, soos Europe/London, of tik op “{ $cancel }”.
help-awaited-roster = Stuur die kinders se byname, een per reël, of ’n lêer, of tik op “{ $cancel }”.
help-awaited-evening = Stuur die tyd van die oefening, soos 17:30, of tik op “{ $cancel }”.
help-awaited-nudge = Stuur die tyd van die een herinnering, soos 19:00, of tik op “{ $cancel }”.
help-awaited-digest = Stuur die tyd van u weekoorsig, soos 20:00, of tik op “{ $cancel }”.
help-awaited-break = Stuur die vakansie se dae en naam, of tik op “{ $cancel }”.
help-awaited-greeting = Stuur u groet: ’n teks, ’n stemboodskap of ’n video, of tik op “{ $cancel }”.
help-awaited-book_new = Stuur die werkboek: sy titel, eerste en laaste bladsy, en die bladsye per dag, of tik op “{ $cancel }”.
help-awaited-book_change = Stuur die werkboek oor: sy titel, eerste en laaste bladsy, en die bladsye per dag, of tik op “{ $cancel }”.
help-awaited-book_page = Stuur die bladsy van die werkboek, of “klaar”, of tik op “{ $cancel }”.
help-awaited-nickname = Stuur die kind se nuwe bynaam, of tik op “{ $cancel }”.
help-awaited-pause = Stuur die dag waarop die oefening weer moet kom, soos 12 Oktober, of tik op “{ $cancel }”.
help-awaited-recording = Tik hierbo waarvoor u opname is, of tik op “{ $cancel }”.
help-awaited-file = Tik hierbo vir watter klas u lys is, of tik op “{ $cancel }”.
help-awaited-file_list = Tik hierbo om die kinders van u lys by te voeg, of tik op “{ $cancel }”.
