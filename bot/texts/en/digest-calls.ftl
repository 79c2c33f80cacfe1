# What is the matter with a family, in a few words. $evenings is how many in a row.
digest-calls-unreachable = messages no longer arrive
digest-calls-undelivered = { $evenings ->
    [one] { $evenings } evening in a row not delivered
   *[other] { $evenings } evenings in a row not delivered
  }
digest-calls-silent = { $evenings ->
    [one] { $evenings } evening in a row without an answer
   *[other] { $evenings } evenings in a row without an answer
  }
digest-calls-left = the helper has left
digest-calls-not_joined = no helper has joined yet

# What a teacher could say on the phone, kindly.
digest-calls-kindly-unreachable = Has the phone changed? A new slip joins them again.
digest-calls-kindly-undelivered = Nothing was wrong on their side. Does the phone have data?
digest-calls-kindly-silent = Would another time suit, or a shorter drill?
digest-calls-kindly-left = Would somebody else like to sit with the child? A new slip joins them.
digest-calls-kindly-not_joined = Did the slip arrive? A new one can be printed.

# $who is a number and a nickname, $why what is the matter.
digest-calls-who-and-why = { $who } ({ $why })
# $families are such, with semicolons between.
digest-calls-to-call = To call: { $families }.
digest-calls-stopped = Not receiving: { $families }.

digest-calls-title = Families to call
digest-calls-title-paged = Families to call, page { $page } of { $pages }
# $kindly is one of the kind questions above.
digest-calls-line = { $who }: { $why }. { $kindly }
digest-calls-none = Nobody just now.
