# Not checked by a native speaker.
rights-erasing-for-helper = Se está borrando todo lo guardado sobre { $child }.
rights-another-asked = Lo ha pedido otro acompañante. Ya no llegan más prácticas.
rights-until-then = Durante un día puede deshacerlo quien lo pidió. Hasta entonces, /mydata le envía una copia.
rights-kept-for-helper = Al final no se borra nada de { $child }.
rights-took-it-back = Quien lo pidió lo ha deshecho. Las prácticas llegan como antes.

rights-erasing-for-teacher = El n.º { $number } de { $class } se está borrando, como desea la familia.
rights-off-the-list = Ya no está en la lista. En un día desaparece todo lo guardado; no tiene que hacer nada.
rights-kept-for-teacher = El n.º { $number } de { $class } vuelve a estar en la lista.
rights-family-took-back = La familia ha cambiado de idea. No se ha perdido nada.

rights-data-of = Todo lo guardado sobre { $child }
rights-two-files = La tabla se abre en una hoja de cálculo; el otro archivo es lo mismo para programas (JSON).
rights-chat-is-yours = Los mensajes de este chat son suyos; borrarlos queda en sus manos.

rights-which-child = Borrar lo guardado
rights-whose = ¿De quién? Usted acompaña a { $children }.
rights-ask = ¿Borrar todo sobre { $child }?
rights-ask-at-once = Al instante: no llegan más prácticas a ningún acompañante y sale de la lista de la clase.
rights-ask-after-a-day = En un día: apodo, marcas, páginas, acuerdos y su cuenta aquí se borran para siempre.
rights-ask-others = Se avisa a los demás acompañantes y al docente, sin motivos. El papel y los mensajes del chat no se borran.
rights-ask-copy = ¿Quiere antes una copia? Envíe /mydata.

rights-erasing = Se están borrando los datos de { $child }.
rights-gone-in-a-day = Ya no se envía nada. En un día no queda nada.
rights-undo = Hasta entonces, «{ $undo }» lo recupera todo y /mydata envía una copia.
rights-erasing-already = Los datos de { $child } ya se están borrando.
rights-only-they = Lo ha pedido otro acompañante. Solo esa persona puede deshacerlo, durante un día.
rights-copy-until-then = Hasta entonces, /mydata le envía una copia.
rights-stays = { $child } se queda.
rights-nothing-lost = No se ha perdido nada. Las prácticas llegan como antes.
rights-not-erased = No se ha cambiado nada.
rights-nothing-held = Aquí no se guarda para usted nada sobre un niño o una niña. Si acompaña a alguien, abra antes su enlace de acceso.

rights-operator-erased = Se ha borrado { $child }, y a cada acompañante que no acompaña a nadie más.
rights-operator-no-child = No existe { $child }. No se ha cambiado nada.
