# Not checked by a native speaker.
breaks-how = Envíe los días y un nombre. Por ejemplo: 12 oct al 16 oct Descanso de otoño
breaks-one-day = También basta un día: 4 sept Día del deporte
breaks-untitled = Descanso

breaks-list = { $class }: descansos
breaks-list-page = { $class }: descansos, página { $page } de { $pages }
breaks-line = { $title }: { $days }
breaks-none = Ninguno a la vista. En los días de descanso no se envía nada.
breaks-tap-to-remove = Toque un descanso para quitarlo.
breaks-button = ✗ { $title }, { $day }

breaks-added = { $title }: { $days } de { $year }
breaks-no-school-day = No incluye ningún día de clase, así que no cambia nada.
breaks-one-school-day = Un día de clase, { $weekday }. Ese día no se envía nada.
breaks-school-days = { $days } días de clase, { $weekdays }. Esos días no se envía nada.
breaks-over = Ya ha pasado: solo cuenta para el resumen y los informes.
breaks-today-stays = La práctica que hoy ya se envió se queda.
breaks-there-already = Ya estaba; no se ha añadido nada.
breaks-removed = Se ha quitado: { $title }.

breaks-bad-shape = No he podido leer { $typed } como un descanso.
breaks-bad-date = { $typed } no es una fecha del calendario.
breaks-bad-slash = { $typed } puede ser dos fechas. Escriba el mes con letras, por favor, como 3 de abril.
breaks-bad-order = { $typed }: el último día es anterior al primero.
breaks-bad-long = { $days } días son demasiados para un descanso; como mucho, { $most }.
breaks-bad-weekday = El { $date } de { $year } es { $weekday }. Envíe otra vez el descanso con el día correcto, por favor.
breaks-date = { $day } { $month }
breaks-date-year = { $day } { $month } { $year }

breaks-holidays = { $class }: días festivos
breaks-holidays-of = { $place }, los próximos doce meses, solo días de clase.
breaks-holidays-none = Ninguno que no esté ya en sus descansos.
breaks-holidays-ticked = { $chosen } de { $of } con marca. Toque uno para dejarlo fuera o volver a incluirlo.
breaks-holidays-compare = Compárelos con el calendario de su escuela, por favor: la ley puede mover días con poco aviso.
breaks-holidays-page = Página { $page } de { $pages }
breaks-holidays-add = { $chosen ->
    [one] Añadir este
   *[other] Añadir estos { $chosen }
  }
breaks-holidays-there = Ya estaban; no se ha añadido nada.
breaks-holidays-added = { $added ->
    [one] { $added } festivo añadido.
   *[other] { $added } festivos añadidos.
  }
breaks-whose-holidays = ¿Los festivos de qué país?
breaks-which-region = { $country }: ¿qué región?
breaks-choose-country = Elija el país de la escuela.
breaks-some-in-region = Algunos festivos son solo de una región.
breaks-places-page = Página { $page } de { $pages }, por orden alfabético.
