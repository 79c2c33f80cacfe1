# Not checked by a native speaker.

own-way-title = { $child }: solo para este niño o niña
own-way-no-plan = Aún no hay ningún plan semanal en uso.
own-way-untimed = Sin límite de tiempo: las tarjetas llegan como imágenes, nunca como clip.
own-way-from-next = Desde la próxima tarde. Lo ven la familia y los docentes de la clase, nadie más.

own-way-part = { $part }, { $amount }
own-way-instead = { $part }, { $amount }, en lugar de { $before }
own-way-no-easier = { $part }, { $amount } (aquí no hay paso más fácil)
own-way-no-harder = { $part }, { $amount } (aquí no hay paso más difícil)

own-way-only = Solo para este niño o niña: { $changes }
own-way-easier = pasos más fáciles
own-way-harder = pasos más difíciles
own-way-fewer = menos tarjetas
own-way-no-timing = sin límite de tiempo
