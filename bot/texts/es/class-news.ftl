# Not checked by a native speaker.
class-news-ended = La práctica en { $class } ha terminado.
class-news-no-more = Ya no llegan más prácticas para { $children }. No tiene que hacer nada.
class-news-thanks = Gracias por cada tarde. ¿Preguntas? Hable con el docente de la clase, por favor.
class-news-resumed = Al final, la práctica en { $class } continúa.
class-news-as-before = Las prácticas de { $children } llegan como antes. El mensaje anterior fue un error.

class-news-archived = { $class }: el docente responsable ha archivado la clase.
class-news-archived-undo = Ya no se envía nada a las familias. Durante un día, cualquier docente de la clase puede deshacerlo: /undo.
class-news-back = { $class } ha vuelto: se archivó por error.
class-news-goes-on = Todo continúa.

class-news-new-lead = { $class } tiene un nuevo docente responsable.
class-news-link-used = Se ha usado su enlace. Usted sigue como codocente; para dejarla, envíe /class y toque «{ $teachers }».
