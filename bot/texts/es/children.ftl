# Not checked by a native speaker.
children-none = { $class }: todavía no hay nadie
children-joined = { $class }: participan { $joined } de { $all }
children-waiting = Todavía no: { $names }
children-left = Su acompañante se ha dado de baja: { $names }
children-unreached = Los mensajes ya no llegan: { $names }
children-legend = { $sign } tiene acompañante. Toque un nombre para cambiar el apodo, pasar a otra clase o crear un enlace nuevo.
children-more = { $more } más

children-helper-left = Su acompañante se ha dado de baja.
children-not-joined = Todavía no participa.
children-helpers = { $helpers ->
    [one] { $helpers } acompañante
   *[other] { $helpers } acompañantes
  }
children-helpers-unreached = { $helpers ->
    [one] { $helpers } acompañante: los mensajes ya no llegan
   *[other] { $helpers } acompañantes: los mensajes ya no llegan
  }
children-helpers-some = { $helpers } acompañantes; los mensajes llegan a { $reachable }
children-drill = Práctica a las { $time }
children-drill-own = Práctica a las { $time }, la hora elegida por la familia

children-link-title = ¿Un enlace nuevo para { $child }?
children-link-note = El enlace o la hoja que se entregó antes deja de funcionar. Quienes ya participan se quedan.

children-nickname = ¿Qué apodo tendrá { $child }? Como máximo { $most } caracteres, sin apellidos.
children-nickname-empty = Ahí no veo ningún apodo.
children-nickname-long = { $typed } tiene { $length } caracteres; el máximo es { $most }.
children-nickname-again = Envíe un apodo de 1 a { $most } caracteres.
children-renamed = { $before } se llama ahora { $now }, desde aquí y en todo.

children-move-no-class = No tiene otra clase. Cree una con /newclass y después haga el cambio.
children-move-title = ¿A qué clase pasa { $child }?
children-move-note = Acompañantes, resultados y hojas se conservan. Una práctica enviada hoy se queda; desde la tarde siguiente valen el plan, la hora y el cuaderno de la otra clase. Se avisa una vez a cada acompañante.
children-moved = { $child } está ahora en { $class }, con el número { $number }.
children-moved-told = Se avisa a cada acompañante.
children-moved-no-plan = Esa clase aún no tiene plan semanal: allí no se envía nada.

children-archived = { $child } pasa al archivo.
children-archived-note = Ya no se envía ninguna práctica y las hojas de acceso dejan de funcionar. Los resultados y el número se guardan: con «{ $button }» se recupera a { $child } en un plazo de { $days } días. Después se borra todo.
children-archive-list = { $count ->
    [one] { $class }: { $count } niño o niña en el archivo
   *[other] { $class }: { $count } niñas y niños en el archivo
  }
children-archive-tap = Toque un nombre para recuperarlo, con su número, acompañantes y resultados. Las prácticas empiezan la tarde siguiente.
children-back = { $child } vuelve a estar en la lista.
