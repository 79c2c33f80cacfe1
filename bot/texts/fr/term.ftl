# Not checked by a native speaker.

term-weeks =
  { $count ->
    [one] { $count } semaine
   *[other] { $count } semaines
  }
term-title = { $class } : le trimestre, { $weeks }
term-begins = Il commence le { $day }.
term-no-days = Aucun jour d’école à venir.
term-over = Il est terminé ; son dernier plan reste en vigueur.
term-next = Le prochain soir d’école tombe dans la semaine { $week }.
term-by-itself = Chacune part d’elle-même, sauf si vous appliquez un autre plan pour cette semaine.

term-as-before = comme avant
term-new = nouveau : { $steps }
term-new-more =
  { $count ->
    [one] nouveau : { $steps } et { $count } autre
   *[other] nouveau : { $steps } et { $count } autres
  }

term-week = Semaine { $week } sur { $of }
term-week-from = Semaine { $week } sur { $of }, dès le { $day }
term-week-now = Le prochain soir d’école tombe dans cette semaine : un changement compte à partir de là.
term-week-over = Cette semaine est passée.

term-new-title = { $class } : un nouveau trimestre
term-from-steps =
  { $count ->
    [one] D’après les étapes habituelles en { $grade } : { $count } étape en tout, les plus faciles d’abord.
   *[other] D’après les étapes habituelles en { $grade } : { $count } étapes en tout, les plus faciles d’abord.
  }
term-ask = Combien de semaines, quelles étapes de l’année et à partir de quand ?
term-passed-over = Les semaines sans école sont sautées. Chaque semaine peut être modifiée ensuite.
term-needs-grade = Un trimestre se fait à partir des étapes habituelles d’un niveau. Choisissez d’abord le programme et le niveau.

term-share-all = Toute l’année
term-share-first = Premier tiers
term-share-second = Deuxième tiers
term-share-last = Dernier tiers
term-make = Le créer, dès le { $day }
term-week-button = Semaine { $week }

term-moved-on = Le trimestre a changé entre-temps. Rien n’a été modifié.
