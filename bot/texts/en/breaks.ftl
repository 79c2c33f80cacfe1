# How a break is typed. Months may be written in any of the five languages; show the reader's.
breaks-how = Send the days and a name. For example: 12 Oct to 16 Oct Half term
breaks-one-day = One day is enough too: 4 Sep Sports day
# The name of a break that was sent without one.
breaks-untitled = Break

breaks-list = { $class }: breaks
breaks-list-page = { $class }: breaks, page { $page } of { $pages }
# $days are one short date or two: Mon 12 Oct to Fri 16 Oct.
breaks-line = { $title }: { $days }
breaks-none = None ahead. On a break’s days nothing goes out.
breaks-tap-to-remove = Tap a break to remove it.
# A button. $day is a short date.
breaks-button = ✗ { $title }, { $day }

breaks-added = { $title }: { $days } { $year }
breaks-no-school-day = No school day of this class is in it, so it changes nothing.
# $weekday is "Tuesday".
breaks-one-school-day = One school day, a { $weekday }. Nothing goes out on it.
# Always two or more. $weekdays is "Mon to Fri" or "Mon and Wed".
breaks-school-days = { $days } school days, { $weekdays }. Nothing goes out on them.
breaks-over = That is over already: only the digest and reports count it.
breaks-today-stays = A drill that went out today already stays.
breaks-there-already = It was there already; nothing was added.
breaks-removed = { $title } removed.

# $typed is what was typed, in quotation marks.
breaks-bad-shape = I could not read { $typed } as one break.
breaks-bad-date = { $typed } is not a date in the calendar.
breaks-bad-slash = { $typed } could be two dates. Please write the month as a word, like 3 April.
breaks-bad-order = { $typed }: the last day comes before the first.
breaks-bad-long = { $days } days are too long for a break, at most { $most }.
# $date is "13 Oct", $weekday what that day really is.
breaks-bad-weekday = { $date } { $year } is a { $weekday }. Please send the break again with the right day.
# A date that the calendar does not have: 30 Feb.
breaks-date = { $day } { $month }
breaks-date-year = { $day } { $month } { $year }

breaks-holidays = { $class }: public holidays
# $place is a country or a region.
breaks-holidays-of = { $place }, the next twelve months, school days only.
breaks-holidays-none = None that is not in your breaks already.
breaks-holidays-ticked = { $chosen } of { $of } ticked. Tap one to leave it out, or to take it in again.
breaks-holidays-compare = Please compare with your school’s own calendar: days can be moved by law at short notice.
breaks-holidays-page = Page { $page } of { $pages }
# A button.
breaks-holidays-add = { $chosen ->
    [one] Add this one
   *[other] Add these { $chosen }
  }
breaks-holidays-there = They were there already; nothing was added.
breaks-holidays-added = { $added ->
    [one] { $added } holiday added.
   *[other] { $added } holidays added.
  }
breaks-whose-holidays = Whose public holidays?
breaks-which-region = { $country }: which region?
breaks-choose-country = Choose the country of the school.
breaks-some-in-region = Some holidays are kept in a region only.
breaks-places-page = Page { $page } of { $pages }, in the order of the alphabet.
