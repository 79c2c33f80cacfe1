# What a helper reads before agreeing. Whenever the meaning changes, NOTICE_VERSION in bot/texts/family.ts changes too.
family-notice-heading = { $child } · { $class }
family-notice-what = A few minutes of mental maths each school day. You read or show the cards, the child answers aloud, you tap what was missed.
family-notice-kept = What is kept
family-notice-kept-what = The nickname, which cards were right, and the workbook pages. No full name, birthday, photo or address. Of you: this chat account and your settings.
family-notice-seen = Who sees it
family-notice-seen-by = You, the child’s other helpers and the teachers of the class. No other family. The teachers do not see your account.
family-notice-long = How long
family-notice-how-long = Marks for 13 months. Everything until 30 days after the child has left the class. The school decides; local law applies.
family-notice-choice = Your choice, at any time
family-notice-commands = /stop ends the messages, /mydata sends you a copy, /erase deletes everything. Nobody asks why.
family-notice-snapshot = A score is a snapshot of one evening, not a judgement of a child.

family-disagreed = Fine. Nothing was stored. The link stays good if you change your mind.
family-joined = You are { $child }’s helper now.
# $days is "Mon to Fri" or "Mon and Wed"; $time is a time of day. /time stays as it is.
family-when = The drill comes { $days } at { $time }. Another time suits better? Send /time 18:00, for example.
family-how-to-go-on = Send /today to see today’s drill again and /stop to end this.

# To somebody unknown.
family-hello = Hello.
family-what-this-is = This bot brings a few minutes of mental maths to children of classes that use it.
family-for-helpers = Helpers: open the join link from your class teacher, or send me the code on your join slip.
family-teachers-teach = Teachers: send /teach to begin.
family-teachers-ask = Teachers: ask the person who runs this bot for an invitation.

family-nothing-today = { $child }: no drill yet today. It comes { $days } at { $time }.
# $children are nicknames: one or several.
family-practice-stopped = Practice for { $children } has stopped. Please ask the school about it; /stop still ends your part.
family-time-set = The drill comes at { $time } now. If that is over for today, it starts tomorrow.
family-time-missing = Please add a time.
# $typed is what was typed, in quotation marks.
family-time-bad = { $typed } is not a time I can use.
family-time-how = Send a time from { $from } to { $to }, like this: /time 18:15
# At most 200 characters.
family-too-late = It is { $now } already: no reminder after { $latest }. Start whenever it suits tonight.

# $children are nicknames: one or several.
family-ask-to-leave = Stop helping { $children }?
family-leaving-means = No more messages come, and your agreement is withdrawn. To join again, open your link once more or ask the teacher for a new one.
family-leaving-keeps = What was marked stays with the class. Shall it be deleted too? Then send /erase instead: it is no longer possible once you have left.
family-left = Done. No more messages will come. Thank you for the time you gave.
family-staying = Good. Everything stays as it was.
family-helps-nobody = You help no child here. What you do as a teacher is under /class and goes on.
