# Not checked by a native speaker.
clock-aid-title = Así se lee
clock-aid-short = Aguja corta y gruesa:
clock-aid-at-hour = en el { $hour }. La hora es { $hour }.
clock-aid-past-hour = ha pasado el { $hour }, no llega al { $next }. La hora es { $hour }.
clock-aid-long = Aguja larga y fina:
clock-aid-at-top = en el 12. Ningún minuto después de la hora.
clock-aid-minutes = en el { $numeral }. Contar de cinco en cinco desde arriba: { $minutes } minutos.
clock-aid-left = { $next ->
    [1] Faltan { $left } minutos para la 1.
   *[other] Faltan { $left } minutos para las { $next }.
  }
clock-aid-short-rule = Aguja corta y gruesa: la hora a la que ha llegado o que ha pasado.
clock-aid-long-rule = Aguja larga y fina: los minutos, de cinco en cinco desde el 12.
