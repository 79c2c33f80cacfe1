# Not checked by a native speaker.
class-now-title = { $title } nou, { $day }
class-now-no-plan = Geen weekplan in gebruik nie: niks word gestuur nie.
class-now-wobbling = Hierdie week om na te kyk: { $facts }.
class-now-helpers = { $children ->
    [one] { $joined } van { $children } kind met ’n helper.
   *[other] { $joined } van { $children } kinders met ’n helper.
  }

class-now-practised-none = Vandag geoefen: { $practised } van { $sent }.
class-now-practised = Vandag geoefen: { $practised } van { $sent } ({ $names }).
class-now-more-names = nog { $count }
class-now-rest = { $rest }.
class-now-waiting = { $count } nog nie gemerk nie
class-now-not-today = { $count } vandag nie

class-now-ahead = Vanaand se oefening gaan vanaf { $time } uit.
class-now-past = Vandag het om { $time } geen oefening uitgegaan nie.
class-now-no-drill = Vandag is daar geen oefening nie.
class-now-next-day = Vandag is daar geen oefening nie. Die volgende skooldag is { $day }.

class-now-plan = { $minutes ->
    [one] In die plan: { $parts }. Ongeveer { $minutes } minuut.
   *[other] In die plan: { $parts }. Ongeveer { $minutes } minute.
  }

class-now-choose-child = { $title }: wie se bladsy?
class-now-sign = ✓ het vandag geoefen.
class-now-sign-paged = { class-now-sign } Bladsy { $page } van { $pages }.
class-now-digest-of = Weekoorsig van { $day }
