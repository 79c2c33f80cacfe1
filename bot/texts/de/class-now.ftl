# Not checked by a native speaker.
class-now-title = { $title } jetzt, { $day }
class-now-no-plan = Kein Wochenplan in Gebrauch: Es wird nichts verschickt.
class-now-wobbling = Diese Woche zum Anschauen: { $facts }.
class-now-helpers = { $children ->
    [one] { $joined } von { $children } Kind mit Begleitperson.
   *[other] { $joined } von { $children } Kindern mit Begleitperson.
  }

class-now-practised-none = Heute geübt: { $practised } von { $sent }.
class-now-practised = Heute geübt: { $practised } von { $sent } ({ $names }).
class-now-more-names = { $count } weitere
class-now-rest = { $rest }.
class-now-waiting = { $count } noch ohne Angaben
class-now-not-today = { $count } heute nicht

class-now-ahead = Die Übung für heute geht ab { $time } hinaus.
class-now-past = Heute ging um { $time } keine Übung hinaus.
class-now-no-drill = Heute keine Übung.
class-now-next-day = Heute keine Übung. Der nächste Schultag ist { $day }.

class-now-plan = { $minutes ->
    [one] Im Plan: { $parts }. Etwa { $minutes } Minute.
   *[other] Im Plan: { $parts }. Etwa { $minutes } Minuten.
  }

class-now-choose-child = { $title }: wessen Seite?
class-now-sign = ✓ hat heute geübt.
class-now-sign-paged = { class-now-sign } Seite { $page } von { $pages }.
class-now-digest-of = Wochenbericht vom { $day }
