# Not checked by a native speaker.
class-file-big = Ese archivo es demasiado grande para una lista: como máximo 1 MB, y sin nada más dentro.
class-file-rows = Una lista tiene aquí 500 filas como máximo; una clase, { $most } niñas y niños como máximo.
class-file-columns = Una lista tiene aquí 40 columnas como máximo. Deje solo la columna de los apodos.
class-file-old = Es una hoja de cálculo de formato antiguo o protegida con contraseña.
class-file-unknown = No puedo leer ese archivo como lista de la clase.
class-file-empty = En ese archivo no hay nada.
class-file-quote = Fila { $row }: hay unas comillas fuera de sitio o sin cerrar.
class-file-send = No se ha añadido nada. Envíe un archivo XLSX o CSV con un apodo en cada fila, o pegue los apodos como texto, uno por línea.

class-file-which-class = ¿Para qué clase es esta lista?
class-file-see-first = Verá los apodos antes de que se añada ninguno.

class-file-nicknames = { $count ->
    [one] { $count } apodo para { $class }
   *[other] { $count } apodos para { $class }
  }
class-file-column = Columna { $letter }
class-file-column-headed = Columna { $letter } { $heading }
class-file-preview = { $column }: { $names }
class-file-until-tap = No se añade nada hasta que toque el botón.

class-file-problems = Todavía no se puede añadir nada.
class-file-problems-in = { $column }:
class-file-mend = Corrija el archivo y envíelo de nuevo, o toque «{ $button }».
class-file-no-names = { $column }: ahí no hay apodos.
class-file-no-names-do = Toque «{ $button }» o envíe otro archivo.
class-file-too-many = { $sent ->
    [one] Es { $sent } apodo; con los { $present } que ya hay pasan de { $most }.
   *[other] Son { $sent } apodos; con los { $present } que ya hay pasan de { $most }.
  }
class-file-shorten = No se ha añadido nada. Acorte el archivo y envíelo de nuevo, o cree otra clase.

class-file-which-column = ¿En qué columna están los apodos?
class-file-names-only = Como máximo { $most } caracteres cada uno, sin apellidos.
class-file-column-button = { $letter }: { $shown }
class-file-column-empty = { $letter }: vacía
class-file-add = { $count ->
    [one] Añadir este apodo
   *[other] Añadir los { $count }
  }
class-file-gone = Esta lista ya no está pendiente: se añadió, o después llegó otra cosa. Mire en «{ $button }» o envíe el archivo de nuevo.
