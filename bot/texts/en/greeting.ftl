# A greeting is a voice note, a video or a text of the teacher's that goes out before the evening.
greeting-ask = Send a voice note or a video of up to { $seconds } seconds and { $megabytes } MB, or a text of up to { $characters } characters. The families get it just as you send it. You see it first, and nothing goes out before the next evening.
# What a family reads above it.
greeting-heading = { $class }: a greeting from the teacher
greeting-none = { $class }: no greeting
greeting-none-note = A voice note, a short video or a text of yours can go out to every family, just before its evening.

greeting-title = { $class }: greeting
greeting-text-first = A text, just before each family’s first evening of a week.
greeting-text-every = A text, just before every evening.
greeting-voice-first = A voice note, just before each family’s first evening of a week.
greeting-voice-every = A voice note, just before every evening.
greeting-video-first = A video, just before each family’s first evening of a week.
greeting-video-every = A video, just before every evening.
greeting-over = Its week is over: it goes out no more. Choose another week to send it again.
# Days are short dates: Mon 14 Sept.
greeting-from = From { $first } on, until you remove it.
greeting-on = On { $day } only.
greeting-days = From { $first } to { $last }, then it ends by itself.
greeting-other-bot = It was recorded for another account of this bot and is not sent. Please send it again.
greeting-once = It comes once to a family, also where two children are in the class.
# A button. $monday is a short date.
greeting-week = Week of { $monday }
greeting-removed = Removed. It goes out no more.

greeting-use-voice = Use this voice note as the greeting of { $class }?
greeting-use-video = Use this video as the greeting of { $class }?
greeting-use-voice-which = Use this voice note as a class’s greeting? Choose the class.
greeting-use-video-which = Use this video as a class’s greeting? Choose the class.
greeting-not-used = Not used. Nothing was changed.
greeting-used = Used as the greeting of { $class }. The families get it like this:
# $button is the label of a button: Greeting.
greeting-gone = That recording is not waiting any more. Open { $button } to see what is in use, or send it again.

greeting-bad-form = I can pass on voice notes and ordinary videos, not round videos or music files.
greeting-bad-seconds = { $seconds ->
    [one] That is { $seconds } second long; a greeting has at most { $most }.
   *[other] That is { $seconds } seconds long; a greeting has at most { $most }.
  }
greeting-bad-megabytes = That is about { $megabytes } MB; a greeting has at most { $most }, since families pay for their data.
greeting-please-send = Please send a voice note or a video of up to { $seconds } seconds and { $megabytes } MB, or a text of up to { $characters } characters.
# $typed is in quotation marks.
greeting-long = { $typed } has { $length } characters; a greeting has 1 to { $most }. Please send a shorter one.
# $send is greeting-please-send.
greeting-empty = I could not see any words in that. { $send }
greeting-not-passed = The chat service does not let me pass this on. Please record and send it again.
greeting-not-sent = { $class }: your greeting was not sent
greeting-not-sent-why = It was recorded for another account of this bot, and I cannot pass it on. The evenings went out as usual.
# $button is the label of a button: Greeting.
greeting-not-sent-again = Please send it once more: /class, then { $button }.
