# Not checked by a native speaker.
months-practised-term = { $count ->
    [0] Das Üben beginnt in diesem Halbjahr mit dem ersten Abend.
    [one] Ein Abend in diesem Halbjahr geübt.
   *[other] { $count } Abende in diesem Halbjahr geübt.
  }
months-practised = { $count ->
    [0] Das Üben beginnt mit dem ersten Abend.
    [one] Bisher ein Abend geübt.
   *[other] Bisher { $count } Abende geübt.
  }
months-title = { $name } im { $month }
months-evenings = { $count ->
    [one] Ein Abend, an dem gemeinsam geübt wurde.
   *[other] { $count } Abende, an denen gemeinsam geübt wurde.
  }
months-secure = Seit diesem Monat sicher: { $steps }.
months-own = Es geht um die eigenen Abende Ihres Kindes, ohne Vergleich mit anderen. /settings stellt es ab.
months-strand = { $strand }: { $right } von { $asked } richtig in zwölf Wochen
