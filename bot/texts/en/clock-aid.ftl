# Drawn beside a clock, for a helper who cannot read one. Hours and minutes are numerals.
clock-aid-title = How to read it
clock-aid-short = Short, thick hand:
clock-aid-at-hour = on { $hour }. The hour is { $hour }.
clock-aid-past-hour = past { $hour }, not yet at { $next }. The hour is { $hour }.
clock-aid-long = Long, thin hand:
clock-aid-at-top = on 12. No minutes past the hour.
clock-aid-minutes = on { $numeral }. Count by fives from the top: { $minutes } minutes.
# Once the long hand is past 6.
clock-aid-left = { $left } minutes are left until { $next }.
# Over several clocks at once.
clock-aid-short-rule = Short, thick hand: the hour it has reached or passed.
clock-aid-long-rule = Long, thin hand: the minutes, counted by fives from 12.
