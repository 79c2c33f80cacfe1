# Not checked by a native speaker.
children-none = { $class }: nog geen kinders nie
children-joined = { $class }: { $joined } van { $all } het aangesluit
children-waiting = Nog nie: { $names }
children-left = Helper is weg: { $names }
children-unreached = Boodskappe kom nie meer aan nie: { $names }
children-legend = { $sign } het ’n helper. Tik op ’n kind vir ’n ander bynaam, ’n ander klas of ’n nuwe skakel.
children-more = nog { $more }

children-helper-left = Die helper is weg.
children-not-joined = Nog nie aangesluit nie.
children-helpers = { $helpers ->
    [one] { $helpers } helper
   *[other] { $helpers } helpers
  }
children-helpers-unreached = { $helpers ->
    [one] { $helpers } helper: boodskappe kom nie meer aan nie
   *[other] { $helpers } helpers: boodskappe kom nie meer aan nie
  }
children-helpers-some = { $helpers } helpers, { $reachable } van hulle bereikbaar
children-drill = Oefening om { $time }
children-drill-own = Oefening om { $time }, die gesin se eie tyd

children-link-title = ’n Nuwe skakel vir { $child }?
children-link-note = Die skakel of briefie wat vroeër uitgegee is, werk dan nie meer nie. Helpers wat reeds aangesluit het, bly.

children-nickname = Wat moet { $child } genoem word? Hoogstens { $most } karakters, sonder ’n van.
children-nickname-empty = Ek sien geen bynaam daarin nie.
children-nickname-long = { $typed } het { $length } karakters, hoogstens { $most } is toegelaat.
children-nickname-again = Stuur ’n bynaam van 1 tot { $most } karakters.
children-renamed = { $before } heet nou { $now }, oral van nou af.

children-move-no-class = Daar is nog geen ander klas nie. Maak een met /newclass en skuif die kind dan daarheen.
children-move-title = Na watter klas gaan { $child }?
children-move-note = Helpers, uitslae en briefies gaan saam. ’n Oefening wat vandag gestuur is, bly; van die volgende aand af geld die ander klas se plan, tyd en werkboek. Elke helper hoor een keer daarvan.
children-moved = { $child } is nou in { $class }, met die nommer { $number }.
children-moved-told = Elke helper hoor daarvan.
children-moved-no-plan = Daardie klas het nog geen weekplan nie: niks gaan daar uit nie.

children-archived = { $child } is geargiveer.
children-archived-note = Geen oefening gaan meer uit nie en die briefies werk nie meer nie. Uitslae en nommer word bewaar: “{ $button }” bring { $child } binne { $days } dae terug. Daarna word alles uitgevee.
children-archive-list = { $count ->
    [one] { $class }: { $count } geargiveerde kind
   *[other] { $class }: { $count } geargiveerde kinders
  }
children-archive-tap = Tik op ’n kind wat moet terugkom, met nommer, helpers en uitslae. Die oefeninge begin met die volgende aand.
children-back = { $child } is weer op die lys.
