# Not checked by a native speaker.
help-first-class = Vamos a crear su primera clase.
help-first-class-takes = Son unos tres minutos: un nombre, una zona horaria y los apodos de niñas y niños. Todo se puede cambiar después.

help-stage-no_children = Ahora: añada a niñas y niños. Envíe sus apodos, uno por línea, o un archivo.
help-stage-no_plan = Ahora: elija qué se practica. Puede empezar con los pasos habituales del curso.
help-stage-nobody_joined = Ahora: dé a cada familia su hoja de acceso. En cuanto alguien se una, las prácticas empiezan solas.
help-running = Todo está en marcha. La próxima práctica sale el { $day } a las { $time }.
help-waiting = { $children ->
    [one] { $children } niño o niña aún no tiene acompañante: hay hojas de acceso nuevas en «{ $print }».
   *[other] { $children } niñas y niños aún no tienen acompañante: hay hojas de acceso nuevas en «{ $print }».
  }
help-classes = Tiene { $classes } clases.
help-which-class = ¿De cuál se trata?
help-command-class = /class · plan, niñas y niños, descansos, resumen
help-command-newclass = /newclass · otra clase más
help-command-undo = /undo · deshacer un cambio del último día

help-you-help = Usted acompaña a { $children }.
help-drill-here = { $child }: la práctica de hoy ya está aquí, véala con /today.
help-drill-comes = { $child }: la práctica llega sola, { $days } a las { $time }.
help-command-today = /today · la práctica de hoy otra vez
help-command-time = /time 18:00 · otra hora, desde la próxima tarde
help-command-show = /show · clip, imágenes o solo texto, para gastar menos datos; /settings · todo lo demás
help-command-stop = /stop · terminar al momento; /mydata y /erase · una copia, o no guardar nada
help-not-asked = No esperaba ningún mensaje ahora, así que no he cambiado nada.

help-still-waiting = Sigo esperando una respuesta.
help-awaited-new_title = Envíe el nombre de la clase nueva o toque «{ $cancel }».
help-awaited-new_zone = Envíe la zona horaria de la clase nueva, como Europe/London, o toque «{ $cancel }».
help-awaited-title = Envíe el nuevo nombre de la clase o toque «{ $cancel }».
help-awaited-zone = Envíe la zona horaria de la clase, como Europe/London, o toque «{ $cancel }».
help-awaited-roster = Envíe los apodos de niñas y niños, uno por línea, o un archivo, o toque «{ $cancel }».
help-awaited-evening = Envíe la hora de la práctica, como 17:30, o toque «{ $cancel }».
help-awaited-nudge = Envíe la hora del recordatorio, como 19:00, o toque «{ $cancel }».
help-awaited-digest = Envíe la hora de su resumen, como 20:00, o toque «{ $cancel }».
help-awaited-break = Envíe los días del descanso y su nombre, o toque «{ $cancel }».
help-awaited-greeting = Envíe su saludo: un texto, una nota de voz o un vídeo, o toque «{ $cancel }».
help-awaited-book_new = Envíe el cuaderno: título, primera y última página y páginas al día, o toque «{ $cancel }».
help-awaited-book_change = Envíe de nuevo el cuaderno: título, primera y última página y páginas al día, o toque «{ $cancel }».
help-awaited-book_page = Envíe la página del cuaderno, o «listo», o toque «{ $cancel }».
help-awaited-nickname = Envíe el nuevo apodo o toque «{ $cancel }».
help-awaited-pause = Envíe el día en que vuelve la práctica, como 12 de octubre, o toque «{ $cancel }».
help-awaited-recording = Toque arriba para qué es su grabación o toque «{ $cancel }».
help-awaited-file = Toque arriba para qué clase es su lista o toque «{ $cancel }».
help-awaited-file_list = Toque arriba para añadir a quienes están en su lista o toque «{ $cancel }».
