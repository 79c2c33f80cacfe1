# Not checked by a native speaker.

paper-child = niño o niña { $number }
paper-page = página { $page } de { $of }
paper-answers = Respuestas
paper-name = Nombre
paper-of = de { $cards }
paper-pages-done = Páginas hechas
paper-from-page = desde la página { $page }
paper-adult = Adulto
paper-how-to-mark = Cada respuesta se dice en voz alta. Anote cuántas fueron correctas. Es solo el resultado de una tarde.

paper-what-it-is = Unos minutos de cálculo mental cada día de clase. Las tarjetas llegan a su teléfono; usted toca las falladas.
paper-scan = Escanee el cuadrado con la cámara del teléfono y toque Start.
paper-or-send = O abra { $place }, toque Start y envíe este código:
paper-until = Válido hasta el
paper-this-family = Entregue esta hoja de acceso solo a esta familia.
