# Not checked by a native speaker.

plan-stand-title = { $class }: plan semanal
plan-stand-nothing = Aún no hay nada. Añada una parte.

plan-stand-evening = Alrededor de { $minutes } por tarde.
plan-stand-evening-pages =
  { $pages ->
    [one] Alrededor de { $minutes } por tarde y luego { $pages } página de { $book }.
   *[other] Alrededor de { $minutes } por tarde y luego { $pages } páginas de { $book }.
  }

plan-stand-full = El máximo son { $max } partes: quite una para añadir otra.

plan-stand-draft-teacher = Con cambios, aún sin aplicar.
plan-stand-draft-proposal = Como propone el resumen, aún sin aplicar.
plan-stand-draft-scheme = Como en el trimestre, aún sin aplicar.

plan-stand-in-use = En uso.
plan-stand-proposed = En uso, como propuso el resumen.
plan-stand-term-over = En uso. El trimestre ha terminado; se mantiene su último plan.
plan-stand-term = En uso, según el trimestre.
plan-stand-term-week = En uso, según el trimestre: semana { $week } de { $of }.
plan-stand-until-term = En uso hasta que empiece el trimestre.
plan-stand-instead = En uso esta semana en lugar de la semana { $week } de { $of } del trimestre.
