# Not checked by a native speaker.
class-now-title = { $title } maintenant, { $day }
class-now-no-plan = Aucun plan de la semaine en service : rien n’est envoyé.
class-now-wobbling = À revoir cette semaine : { $facts }.
class-now-helpers = { $children ->
    [one] { $joined } sur { $children } enfant a une aide.
   *[other] Avec une aide : { $joined } des { $children } enfants.
  }

class-now-practised-none = Se sont exercés aujourd’hui : { $practised } sur { $sent }.
class-now-practised = Se sont exercés aujourd’hui : { $practised } sur { $sent } ({ $names }).
class-now-more-names = { $count ->
    [one] { $count } autre
   *[other] { $count } autres
  }
class-now-rest = { $rest }.
class-now-waiting = { $count } encore sans réponse
class-now-not-today = { $count } pas aujourd’hui

class-now-ahead = La séance de ce soir est envoyée à partir de { $time }.
class-now-past = Aucune séance n’est partie aujourd’hui à { $time }.
class-now-no-drill = Pas de séance aujourd’hui.
class-now-next-day = Pas de séance aujourd’hui. Prochain jour d’école : { $day }.

class-now-plan = { $minutes ->
    [one] Au plan : { $parts }. Environ { $minutes } minute.
   *[other] Au plan : { $parts }. Environ { $minutes } minutes.
  }

class-now-choose-child = { $title } : la page de qui ?
class-now-sign = ✓ s’est exercé aujourd’hui.
class-now-sign-paged = { class-now-sign } Page { $page } sur { $pages }.
class-now-digest-of = Bilan du { $day }
