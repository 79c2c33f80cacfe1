# Not checked by a native speaker.
fewer-title = { $title }: minder aande
fewer-title-paged = { $title }: minder aande, bladsy { $page } van { $pages }
fewer-announced-three = { $who }: twee weke geen antwoord nie. Vanaf { $day } drie aande per week.
fewer-announced-one = { $who }: twee weke geen antwoord nie. Vanaf { $day } een aand per week.
fewer-line = { $who }: { $words }
fewer-words-announced-three = drie aande per week vanaf { $day }
fewer-words-announced-one = een aand per week vanaf { $day }
fewer-words-three = drie aande per week, omdat niemand geantwoord het nie
fewer-words-one = een aand per week, omdat niemand geantwoord het nie
fewer-words-kept = elke skooldag, soos die onderwyser dit hou
fewer-words-paused = pouse tot { $day }
fewer-words-days = net { $days }, soos die gesin gekies het
fewer-hint = Hou dit daagliks, en die oefening kom steeds elke skooldag. Die gesin kan dit ook met een tik so kry. ’n Oproep help dikwels meer.
fewer-none = Tans niemand nie: die oefening kom elke skooldag by elke gesin.
fewer-digest = Minder aande: { $list }.
fewer-kept = Die oefening kom elke skooldag, totdat die gesin weer antwoord.
fewer-let-go = Minder aande kom vanaf { $day }, tensy die gesin antwoord.
