class-now-title = { $title } now, { $day }
class-now-no-plan = No week plan in use: nothing goes out.
class-now-wobbling = Wobbling this week: { $facts }.
# $joined of the class's $children have a helper.
class-now-helpers = { $children ->
    [one] { $joined } of { $children } child with a helper.
   *[other] { $joined } of { $children } children with a helper.
  }

# $sent is how many children were sent an evening.
class-now-practised-none = Practised today: { $practised } of { $sent }.
# $names are nicknames.
class-now-practised = Practised today: { $practised } of { $sent }: { $names }.
# The last of a list of nicknames.
class-now-more-names = { $count } more
# $rest is a list of the next two and digest-undelivered.
class-now-rest = { $rest }.
class-now-waiting = { $count } not marked yet
class-now-not-today = { $count } said not today

class-now-ahead = Tonight’s drill goes out from { $time } on.
class-now-past = No drill went out today at { $time }.
class-now-no-drill = No drill today.
class-now-next-day = No drill today. The next school day is { $day }.

# $parts are titles of the plan's parts, with semicolons between.
class-now-plan = { $minutes ->
    [one] In the plan: { $parts }. About { $minutes } minute.
   *[other] In the plan: { $parts }. About { $minutes } minutes.
  }

class-now-choose-child = { $title }: whose page?
class-now-sign = ✓ has practised today.
class-now-sign-paged = { class-now-sign } Page { $page } of { $pages }.
# On a button.
class-now-digest-of = Digest of { $day }
