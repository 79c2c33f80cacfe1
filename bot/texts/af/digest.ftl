# Not checked by a native speaker.
digest-caution = Die merke is die helpers se woord. ’n Aand wat ontbreek, is nie ’n nul nie. ’n Telling is nie ’n diagnose nie.

digest-first-line = { $title }: { $headline }.
digest-no-evenings = geen aande om van te vertel nie
digest-all-left = al die helpers het opgehou
digest-none-joined = nog geen gesin het aangesluit nie
digest-practised-three = { $practised } van { $joined } het op drie dae of meer geoefen
digest-practised-both = { $practised } van { $joined } het op albei dae geoefen
digest-practised-one = { $practised } van { $joined } het op die een dag geoefen
digest-ready = gereed vir die volgende stap: { $steps }
digest-none-ready = nog niks gereed vir die volgende stap nie
digest-to-call = gesinne om te bel: { $count }

digest-evenings = { $days }: { $ended }.
digest-practised = { $count ->
    [one] { $count } aand geoefen
   *[other] { $count } aande geoefen
  }
digest-put-off = { $count } uitgestel
digest-unanswered = { $count } sonder antwoord
digest-undelivered = { $count } nie afgelewer nie
digest-no-days = Geen skooldae in hierdie sewe dae nie.

digest-wobbling = Om na te kyk: { $facts }.
digest-splitting = Die moeite werd om te verdeel: { $steps }.
digest-workbook = { $count ->
    [one] Werkboek: { $count } bladsy klaar.
   *[other] Werkboek: { $count } bladsye klaar.
  }
digest-steps-and-more = { $shown } en nog { $more }

digest-facts-title = Feite om na te kyk
digest-fact = { $children ->
    [one] { $facts }: { $missed } van { $asked } gemis, deur een kind
   *[other] { $facts }: { $missed } van { $asked } gemis, deur { $children } kinders
  }
digest-facts-rule = Gemis deur twee kinders of meer, of deur een op twee dae.
digest-facts-none = Niks is deur twee kinders gemis nie, en ook nie deur een op twee dae nie.
