# Not checked by a native speaker.
clock-aid-title = So wird sie gelesen
clock-aid-short = Kurzer, dicker Zeiger:
clock-aid-at-hour = auf der { $hour }. Die Stunde ist { $hour }.
clock-aid-past-hour = nach der { $hour }, noch nicht bei der { $next }. Die Stunde ist { $hour }.
clock-aid-long = Langer, dünner Zeiger:
clock-aid-at-top = auf der 12. Keine Minuten nach der vollen Stunde.
clock-aid-minutes = auf der { $numeral }. Von oben in Fünfern zählen: { $minutes } Minuten.
clock-aid-left = Bis { $next } fehlen noch { $left } Minuten.
clock-aid-short-rule = Kurzer, dicker Zeiger: die Stunde, die er erreicht oder hinter sich hat.
clock-aid-long-rule = Langer, dünner Zeiger: die Minuten, von der 12 an in Fünfern gezählt.
