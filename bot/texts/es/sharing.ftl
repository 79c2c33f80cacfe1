# Not checked by a native speaker.
sharing-ask = ¿Otra persona adulta para acompañar a { $name }?
sharing-what = El enlace se abre una vez, en { $days } días. Quien lo abra lee el aviso y acepta; después recibe la práctica de { $name } y ve lo marcado.
sharing-helpers = { $count ->
    [one] { $name } tiene ahora un acompañante. El docente ve el número, ningún nombre.
   *[other] { $name } tiene ahora { $count } acompañantes. El docente ve el número, ningún nombre.
  }
sharing-open = Un enlace suyo está abierto hasta el { $until }. Uno nuevo lo sustituye.
sharing-not-sibling = El enlace para otra persona adulta lo da una madre, un padre u otra persona adulta. Pídaselo, por favor.
sharing-many = { $name } tiene { $most } acompañantes, los que caben por esta vía. El docente puede dar otra hoja de acceso.
sharing-week = Se pueden pasar { $most } enlaces por semana, y los de esta ya están dados. El docente puede dar otra hoja de acceso.
sharing-whom = ¿A quién acompañará otra persona adulta?
sharing-names = Usted acompaña a { $names }.
sharing-link = Para otro acompañante de { $name }
sharing-pass-on = Dé este enlace a una persona adulta que conozca bien, y a nadie más:
sharing-until = Se abre una vez, hasta el { $until }. /stop termina su parte; la otra sigue.
sharing-make = Crear el enlace
