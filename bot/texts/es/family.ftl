# Not checked by a native speaker.
family-notice-heading = { $child } · { $class }
family-notice-what = Unos minutos de cálculo mental cada día de clase. Usted lee o enseña las tarjetas, el niño o la niña responde en voz alta y usted toca las falladas.
family-notice-kept = Qué se guarda
family-notice-kept-what = El apodo, qué tarjetas fueron correctas y las páginas del cuaderno. Ni nombre completo, ni cumpleaños, ni foto, ni dirección. De usted: esta cuenta de chat y sus ajustes.
family-notice-seen = Quién lo ve
family-notice-seen-by = Usted, los demás acompañantes y los docentes de la clase. Ninguna otra familia. Los docentes no ven su cuenta.
family-notice-long = Cuánto tiempo
family-notice-how-long = Las marcas, 13 meses. Todo, hasta 30 días después de dejar la clase. Decide la escuela; se aplica la ley local.
family-notice-choice = Su decisión, en cualquier momento
family-notice-commands = /stop para los mensajes, /mydata le envía una copia, /erase lo borra todo. Nadie pregunta por qué.
family-notice-snapshot = Una marca es la foto de una tarde, no un juicio sobre nadie.

family-disagreed = Muy bien. No se ha guardado nada. El enlace sigue valiendo si cambia de idea.
family-joined = Ahora usted acompaña a { $child }.
family-when = La práctica llega { $days } a las { $time }. ¿Prefiere otra hora? Envíe, por ejemplo, /time 18:00.
family-how-to-go-on = Envíe /today para ver otra vez la práctica de hoy y /stop para dejarlo.

family-hello = Hola.
family-what-this-is = Este bot lleva unos minutos de cálculo mental a niñas y niños de las clases que lo usan.
family-for-helpers = Acompañantes: abran el enlace de acceso del docente o envíenme el código de su hoja de acceso.
family-teachers-teach = Docentes: envíen /teach para empezar.
family-teachers-ask = Docentes: pidan una invitación a quien lleva este bot.

family-nothing-today = { $child }: hoy todavía no hay práctica. Llega { $days } a las { $time }.
family-practice-stopped = La práctica de { $children } ha parado. Pregunte en la escuela, por favor; con /stop termina también su parte.
family-time-set = La práctica llega ahora a las { $time }. Si hoy esa hora ya ha pasado, empieza mañana.
family-time-missing = Añada una hora, por favor.
family-time-bad = { $typed } no es una hora que pueda usar.
family-time-how = Envíe una hora entre las { $from } y las { $to }, así: /time 18:15
family-too-late = Ya son las { $now }: no hay recordatorios después de las { $latest }. Empiecen hoy cuando les venga bien.

family-ask-to-leave = ¿Dejar de acompañar a { $children }?
family-leaving-means = No llegan más mensajes y su acuerdo queda retirado. Para volver, abra otra vez su enlace o pida uno nuevo al docente.
family-leaving-keeps = Lo marcado se queda en la clase. ¿Quiere que también se borre? Entonces envíe /erase: después de dejarlo ya no es posible.
family-left = Hecho. No llegarán más mensajes. Gracias por el tiempo que ha dedicado.
family-staying = Bien. Todo queda como estaba.
family-helps-nobody = Aquí no acompaña a ningún niño o niña. Lo que hace como docente está en /class y continúa.
