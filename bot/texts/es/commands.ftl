# Not checked by a native speaker.
commands-today = La práctica de hoy otra vez
commands-time = Otra hora: /time 18:15
commands-show = Clip, imágenes o solo texto
commands-settings = Sus ajustes
commands-language = Otro idioma
commands-days = Días en que llega la práctica
commands-pause = Una pausa en la práctica
commands-share = Un enlace para otra persona adulta
commands-class = Docentes: su clase
commands-newclass = Docentes: crear una clase
commands-undo = Docentes: deshacer un cambio
commands-stop = Parar todos los mensajes
commands-mydata = Qué se guarda sobre el niño o la niña
commands-erase = Borrarlo
commands-help = Qué hace este bot
