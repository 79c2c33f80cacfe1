# Not checked by a native speaker.
digest-calls-unreachable = Nachrichten kommen nicht mehr an
digest-calls-undelivered = { $evenings ->
    [one] { $evenings } Abend nicht zugestellt
   *[other] { $evenings } Abende in Folge nicht zugestellt
  }
digest-calls-silent = { $evenings ->
    [one] { $evenings } Abend ohne Antwort
   *[other] { $evenings } Abende in Folge ohne Antwort
  }
digest-calls-left = die Begleitperson hat aufgehört
digest-calls-not_joined = noch keine Begleitperson dabei

digest-calls-kindly-unreachable = Gibt es ein neues Handy? Mit einem neuen Zettel sind sie wieder dabei.
digest-calls-kindly-undelivered = An der Familie lag es nicht. Hat das Handy Internet?
digest-calls-kindly-silent = Würde eine andere Zeit besser passen, oder eine kürzere Übung?
digest-calls-kindly-left = Möchte jemand anders beim Kind sitzen? Mit einem neuen Zettel geht das.
digest-calls-kindly-not_joined = Ist der Zettel angekommen? Ein neuer lässt sich drucken.

digest-calls-who-and-why = { $who } ({ $why })
digest-calls-to-call = Anrufen: { $families }.
digest-calls-stopped = Ohne Empfang: { $families }.

digest-calls-title = Familien zum Anrufen
digest-calls-title-paged = Familien zum Anrufen, Seite { $page } von { $pages }
digest-calls-line = { $who }: { $why }. { $kindly }
digest-calls-none = Im Moment niemand.
