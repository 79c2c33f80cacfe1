# Not checked by a native speaker.
clock-aid-title = So word dit gelees
clock-aid-short = Kort, dik wyser:
clock-aid-at-hour = op { $hour }. Die uur is { $hour }.
clock-aid-past-hour = verby { $hour }, nog nie by { $next } nie. Die uur is { $hour }.
clock-aid-long = Lang, dun wyser:
clock-aid-at-top = op 12. Geen minute verby die uur nie.
clock-aid-minutes = op { $numeral }. Tel in vywe van bo af: { $minutes } minute.
clock-aid-left = Nog { $left } minute tot { $next }.
clock-aid-short-rule = Kort, dik wyser: die uur wat hy bereik het of verby is.
clock-aid-long-rule = Lang, dun wyser: die minute, in vywe van 12 af getel.
