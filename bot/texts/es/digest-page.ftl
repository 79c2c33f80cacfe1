# Not checked by a native speaker.
digest-page-grid-note = cifras: aciertos, en %
digest-page-answer = { $headline }.
digest-page-evenings = { $ended }.
digest-page-sent = La semana en una página. Lleva nombres de la clase: imprímala solo para su uso.
