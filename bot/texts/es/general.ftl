# Not checked by a native speaker.
general-text-only = Solo entiendo texto y botones. Envíe /help para ver qué sé hacer.
general-private-only = Escríbame en un chat privado, por favor. Los resultados de niñas y niños nunca van a un grupo.
