# Not checked by a native speaker.
teachers-title = { $class }: docentes
teachers-alone = Solo usted.
teachers-you-lead = Usted y { $others } más. Usted es docente responsable.
teachers-you-co = Usted y { $others } más. Usted es codocente.
teachers-open-lead = Un enlace para traspasar la clase está abierto hasta el { $day }.
teachers-open-co = Un enlace para un codocente está abierto hasta el { $day }.
teachers-lead-can = Cada docente ve y hace todo. Invitar, retirar y archivar son tareas del docente responsable.
teachers-co-can = Aquí usted ve y hace todo. Invitar, retirar y archivar son tareas del docente responsable.
teachers-no-names = No se guardan nombres: los codocentes se distinguen por el día en que llegaron.

teachers-link-lead = Para traspasar { $class }
teachers-link-co = Para un codocente de { $class }
teachers-link-once = Para una persona, una vez, en { $days } días. Solo lo muestro ahora.
teachers-link-note-lead = Quien lo abra pasa a ser docente responsable. Usted sigue como codocente hasta que deje la clase.
teachers-link-note-co = Quien lo abra ve los apodos y los resultados de niñas y niños: compártalo con cuidado.
teachers-link-made = Desde que se mostró esto se ha creado un enlace; está más abajo. Si no ha llegado, toque otra vez.

teachers-remove = ✗ Codocente { $number }, desde el { $day }
teachers-removed = Ya no está. Desde ahora no ve nada de esta clase.
teachers-leave = ¿Dejar { $class }?
teachers-leave-note = Ya no la verá ni recibirá el resumen. La clase continúa. Para volver necesita un enlace nuevo del docente responsable.
teachers-left = Ha dejado la clase.

teachers-archived = { $class } está en el archivo.
teachers-archived-now = Ya no se envía nada, tampoco las prácticas de esta tarde. Dentro de una hora se avisa una vez a cada familia de que la práctica termina.
teachers-archived-undo = «{ $undo }» lo recupera todo, durante un día. Antes de que pase la hora no se entera nadie. Pasados { $days } días se borran los datos de niñas y niños.

teachers-joined-lead = Ahora da clase en { $class }, como docente responsable.
teachers-joined-co = Ahora da clase en { $class }, como codocente.
teachers-joined-note-lead = Si alguien se la ha traspasado, sigue como codocente hasta que la deje.
teachers-joined-note-co = Aquí puede hacer todo menos invitar, retirar y archivar. El resumen también le llega a usted.

teachers-classes = Sus clases
teachers-classes-none = De momento, ninguna. Cree una o abra el enlace de un colega.
teachers-classes-page = { $classes } clases. Página { $page } de { $pages }.
teachers-by-invitation = Aquí hace falta una invitación para docentes. Pídala a quien gestiona este bot, o pida a un colega un enlace a su clase.
