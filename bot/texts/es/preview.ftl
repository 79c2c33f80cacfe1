# Not checked by a native speaker.

preview-name = Vista previa
preview-draft = Vista previa: lo que recibe una familia cuando usted aplique el plan. Nada de lo que toque aquí se guarda.
preview-plan = Vista previa: lo que recibe una familia la próxima tarde. Nada de lo que toque aquí se guarda.
preview-over = La vista previa ha terminado. No se ha guardado nada.
