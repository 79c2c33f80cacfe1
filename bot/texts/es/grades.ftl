# Not checked by a native speaker.

grades-england = Inglaterra
grades-ccss = Common Core
grades-caps = Sudáfrica
grades-acara = Australia

grades-name = { $grade }, { $curriculum }

grades-title = { $class }: pasos habituales
grades-now = Ahora: { $grade }.
grades-none = Ahora: sin curso, todos los pasos por igual.
grades-only-sorts = Esto solo ordena los pasos que se muestran: manda el currículo de su centro.
grades-which-curriculum = ¿Qué currículo se parece más al suyo?
grades-which = { $curriculum }: ¿qué curso?
