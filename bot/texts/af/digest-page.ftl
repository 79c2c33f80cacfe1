# Not checked by a native speaker.
digest-page-grid-note = syfers: deel reg, in %
digest-page-answer = { $headline }.
digest-page-evenings = { $ended }.
digest-page-sent = Die week op een bladsy. Kinders se name is daarop: druk dit net vir eie gebruik.
