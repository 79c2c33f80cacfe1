# Not checked by a native speaker.
months-practised-term = { $count ->
    [0] Nach den Ferien beginnt das Üben mit dem ersten Abend.
    [one] Seit den Ferien an einem Abend geübt.
   *[other] Seit den Ferien an { $count } Abenden geübt.
  }
months-practised = { $count ->
    [0] Das Üben beginnt mit dem ersten Abend.
    [one] Bisher an einem Abend geübt.
   *[other] Bisher an { $count } Abenden geübt.
  }
months-title = { $name } im { $month }
months-evenings = { $count ->
    [one] Ein Abend, an dem gemeinsam geübt wurde.
   *[other] { $count } Abende, an denen gemeinsam geübt wurde.
  }
months-secure = Seit diesem Monat sicher: { $steps }.
months-own = Es geht um die eigenen Abende Ihres Kindes, ohne Vergleich mit anderen. /settings stellt es ab.
months-strand = { $strand }: { $right } von { $asked } richtig in zwölf Wochen
