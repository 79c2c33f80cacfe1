# Not checked by a native speaker.

plan-cards =
  { $count ->
    [one] { $count } tarjeta
   *[other] { $count } tarjetas
  }
plan-numbers =
  { $count ->
    [one] { $count } número
   *[other] { $count } números
  }

plan-size = { $amount }, { $seconds } s por respuesta
plan-line = { $part }: { $size }

plan-and-more = { $step } y { $count } más

plan-usual-size = Tamaño habitual: { $size }.
plan-shuffled = Las tarjetas salen barajadas, más o menos las mismas de cada uno.
plan-step-usual = { $step }, paso habitual en { $grade }
plan-step-not-usual = { $step }, paso que no figura como habitual en { $grade }

plan-statement = { $grade }: { $statement }.
plan-source = Con nuestras palabras, en inglés; { $source }.
plan-doubt-secondary = leído solo en un resumen
plan-doubt-memory = de memoria, conviene comprobarlo
plan-not-usual = No figura como habitual en { $grade }.
plan-usual-elsewhere = No figura como habitual en { $grade }, pero sí en { $others }.
plan-no-source = Sin fuente publicada: práctica común.
plan-asked-for = Se pide (con nuestras palabras, en inglés):
plan-other-places =
  { $count ->
    [one] y en { $count } lugar más
   *[other] y en { $count } lugares más
  }

plan-already-there = La parte { $part } ya practica eso. Elija otra cosa.
plan-no-room-apart = Por separado serían { $parts } partes, y el máximo es { $max }. Quite antes otra parte.
plan-none-last = La semana pasada no había ningún plan en uso.
plan-none-digest = El resumen todavía no propone ningún cambio en este plan.
plan-none-term = El trimestre no tiene plan para la próxima tarde.
plan-none-same = Ese plan ya está en uso.
plan-put-in-use = En uso desde la próxima tarde. Las prácticas ya enviadas quedan como están.

plan-problem-empty = El plan necesita al menos una parte. Añada una primero.
plan-problem-parts = { $value } partes son demasiadas: { $max } como máximo. Quite una.
plan-problem-cards = Parte { $part }: no puede tener { $value } tarjetas; caben de { $min } a { $max }.
plan-problem-seconds = Parte { $part }: no puede ser { $value } s; valen de { $min } a { $max } segundos.
plan-problem-twice = La parte { $part } practica lo mismo que otra. Elija otra cosa.
plan-problem-mixed = La parte { $part } mezcla { $value } pasos; caben { $max } como máximo. Saque uno.
plan-problem-unlike = Parte { $part }: estos pasos piden cosas distintas y no se pueden barajar. Déjelos por separado.
plan-problem-unknown = La parte { $part } practica algo que esta versión no conoce. Elija de nuevo.
