# Not checked by a native speaker.

turns-next = Suite : { $child }
turns-after = { $child } passe après { $first }.
turns-now = C’est maintenant le tour de { $child }.
turns-begun = La séance de { $child } a déjà son propre message. Envoyez /today pour la revoir.
turns-over = C’est fini pour aujourd’hui avec { $child }.
turns-about = { $child } : { $text }
