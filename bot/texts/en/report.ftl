# Headings and small print of a report on one child, on paper, for its family.
report-strands = What was practised
report-weeks = share right, week by week
report-dots = a dot for each evening practised
report-steps = Small next steps
report-not-said = What this page does not say
report-page = page { $page } of { $of }
report-child = child { $number }
# Stands for a nickname that cannot be printed, in the sentences below.
report-the-child = This child
report-foot = Made on { $day } from what the family marked at home.

# $practised of $days school days; $first and $last are dates.
report-lead = { $days ->
    [one] { $name } practised mental maths at home on { $practised } of { $days } school day, from { $first } to { $last }.
   *[other] { $name } practised mental maths at home on { $practised } of { $days } school days, from { $first } to { $last }.
  }
report-lead-none = { $name } has no marked evening in these weeks, so there is nothing to tell yet.
report-pages-done = { $count ->
    [one] { $count } workbook page was done.
   *[other] { $count } workbook pages were done.
  }

# $steps are titles of steps, $facts sums with their answers, with semicolons between.
report-secure = Knows this well: { $steps }.
report-in_between = On the way: { $steps }.
report-not_yet = Needs more time: { $steps }.
report-too_few = Just begun, too early to say: { $steps }.
report-meeting = { $name } is still meeting { $facts }.

report-say-together = Say these aloud together, once a day: { $facts }.
report-go-on = Ready to meet what comes next: { $step }.
report-as-now = Go on as now: a few minutes, with a rest when a day was long.

report-no-test = It is no test and no diagnosis. It does not say how clever a child is.
report-compared = { $name } is compared with nobody: every line is about { $name }’s own evenings.
report-whose-word = What was right is what the family marked. An evening without marks is not known; it is not a nought.

# On buttons: how far back a report goes.
report-six-weeks = Last 6 weeks
report-twelve-weeks = Last 12 weeks
report-since-start = Since the start

report-choose-class = { $title }: reports
report-choose-child = { $title }: report on { $name }
report-every-child = One PDF with a page or two for every child, in words a parent can read.
report-one-child = A PDF of a page or two, in words a parent can read.
report-own-evenings = It is about the child’s own evenings: no other child is in it, and no ranking.
report-choose-span = Choose how far back it goes, then make it.
report-sent-one = The report. Please read it before you hand it on.
# Never one child alone.
report-sent = Reports on { $children } children, each on pages of its own. Please read them before you hand them on, and give each family only its own.
report-nobody = There are no children in this class yet, so there is nothing to report.
