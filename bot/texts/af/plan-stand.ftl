# Not checked by a native speaker.

plan-stand-title = { $class }: weekplan
plan-stand-nothing = Nog niks nie. Voeg ’n deel by.

plan-stand-evening = Omtrent { $minutes } per aand.
plan-stand-evening-pages =
  { $pages ->
    [one] Omtrent { $minutes } per aand, dan { $pages } bladsy van { $book }.
   *[other] Omtrent { $minutes } per aand, dan { $pages } bladsye van { $book }.
  }

plan-stand-full = { $max } dele is die meeste: haal een weg om ’n ander by te voeg.

plan-stand-draft-teacher = Verander, nog nie in gebruik nie.
plan-stand-draft-proposal = Soos die weekoorsig voorstel, nog nie in gebruik nie.
plan-stand-draft-scheme = Soos in die kwartaal, nog nie in gebruik nie.

plan-stand-in-use = In gebruik.
plan-stand-proposed = In gebruik, soos die weekoorsig voorgestel het.
plan-stand-term-over = In gebruik. Die kwartaal is verby; sy laaste plan bly.
plan-stand-term = In gebruik, uit die kwartaal.
plan-stand-term-week = In gebruik, uit die kwartaal: week { $week } van { $of }.
plan-stand-until-term = In gebruik totdat die kwartaal begin.
plan-stand-instead = Hierdie week in gebruik in plaas van die kwartaal se week { $week } van { $of }.
