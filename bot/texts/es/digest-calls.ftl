# Not checked by a native speaker.
digest-calls-unreachable = los mensajes ya no llegan
digest-calls-undelivered = { $evenings ->
    [one] { $evenings } tarde sin entregar
   *[other] { $evenings } tardes seguidas sin entregar
  }
digest-calls-silent = { $evenings ->
    [one] { $evenings } tarde sin respuesta
   *[other] { $evenings } tardes seguidas sin respuesta
  }
digest-calls-left = el acompañante lo ha dejado
digest-calls-not_joined = todavía no se ha unido ningún acompañante

digest-calls-kindly-unreachable = ¿Han cambiado de teléfono? Con una hoja de acceso nueva vuelven a entrar.
digest-calls-kindly-undelivered = No fue culpa suya. ¿Tiene datos el teléfono?
digest-calls-kindly-silent = ¿Les vendría mejor otra hora, o una práctica más corta?
digest-calls-kindly-left = ¿Hay otra persona que quiera acompañar? Con una hoja de acceso nueva puede entrar.
digest-calls-kindly-not_joined = ¿Llegó la hoja de acceso? Se puede imprimir otra.

digest-calls-who-and-why = { $who } ({ $why })
digest-calls-to-call = Para llamar: { $families }.
digest-calls-stopped = No reciben nada: { $families }.

digest-calls-title = Familias a las que llamar
digest-calls-title-paged = Familias a las que llamar, página { $page } de { $pages }
digest-calls-line = { $who }: { $why }. { $kindly }
digest-calls-none = Ahora mismo, ninguna.
