# Not checked by a native speaker.
greeting-ask = Senden Sie eine Sprachnachricht oder ein Video bis { $seconds } Sekunden und { $megabytes } MB, oder einen Text bis { $characters } Zeichen. Die Familien bekommen alles genau so, wie Sie es senden. Sie sehen es zuerst, und vor dem nächsten Abend geht nichts hinaus.
greeting-heading = { $class }: ein Gruß von der Lehrkraft
greeting-none = { $class }: kein Gruß
greeting-none-note = Eine Sprachnachricht, ein kurzes Video oder ein Text von Ihnen kann an alle Familien gehen, kurz vor der Übung.

greeting-title = { $class }: Gruß
greeting-text-first = Ein Text, bei jeder Familie kurz vor der ersten Übung der Woche.
greeting-text-every = Ein Text, kurz vor jeder Übung.
greeting-voice-first = Eine Sprachnachricht, bei jeder Familie kurz vor der ersten Übung der Woche.
greeting-voice-every = Eine Sprachnachricht, kurz vor jeder Übung.
greeting-video-first = Ein Video, bei jeder Familie kurz vor der ersten Übung der Woche.
greeting-video-every = Ein Video, kurz vor jeder Übung.
greeting-over = Die Woche ist vorbei: Er wird nicht mehr verschickt. Wählen Sie eine andere Woche, um ihn noch einmal zu senden.
greeting-from = Ab { $first }, bis Sie ihn entfernen.
greeting-on = Nur am { $day }.
greeting-days = Von { $first } bis { $last }, dann endet er von selbst.
greeting-other-bot = Er wurde für ein anderes Konto dieses Bots aufgenommen und wird nicht verschickt. Bitte senden Sie ihn noch einmal.
greeting-once = Jede Familie bekommt ihn einmal, auch mit zwei Kindern in der Klasse.
greeting-week = Woche ab { $monday }
greeting-removed = Entfernt. Er wird nicht mehr verschickt.

greeting-use-voice = Diese Sprachnachricht als Gruß von { $class } verwenden?
greeting-use-video = Dieses Video als Gruß von { $class } verwenden?
greeting-use-voice-which = Diese Sprachnachricht als Gruß einer Klasse verwenden? Wählen Sie die Klasse.
greeting-use-video-which = Dieses Video als Gruß einer Klasse verwenden? Wählen Sie die Klasse.
greeting-not-used = Nicht verwendet. Es hat sich nichts geändert.
greeting-used = Das ist jetzt der Gruß von { $class }. So bekommen ihn die Familien:
greeting-gone = Diese Aufnahme wartet nicht mehr. Unter „{ $button }“ sehen Sie, was gilt, oder Sie senden sie noch einmal.

greeting-bad-form = Weitergeben kann ich Sprachnachrichten und gewöhnliche Videos, keine runden Videos und keine Musikdateien.
greeting-bad-seconds = { $seconds ->
    [one] Das dauert { $seconds } Sekunde; ein Gruß dauert höchstens { $most }.
   *[other] Das dauert { $seconds } Sekunden; ein Gruß dauert höchstens { $most }.
  }
greeting-bad-megabytes = Das sind etwa { $megabytes } MB; ein Gruß hat höchstens { $most }, weil die Familien für ihre Daten bezahlen.
greeting-please-send = Bitte senden Sie eine Sprachnachricht oder ein Video bis { $seconds } Sekunden und { $megabytes } MB, oder einen Text bis { $characters } Zeichen.
greeting-long = { $typed } hat { $length } Zeichen; ein Gruß hat 1 bis { $most }. Bitte senden Sie einen kürzeren.
greeting-empty = Darin konnte ich keine Wörter sehen. { $send }
greeting-not-passed = Der Chatdienst lässt mich das nicht weitergeben. Bitte nehmen Sie es noch einmal auf und senden Sie es.
greeting-not-sent = { $class }: Ihr Gruß wurde nicht verschickt
greeting-not-sent-why = Er wurde für ein anderes Konto dieses Bots aufgenommen, und ich kann ihn nicht weitergeben. Die Übungen kamen wie immer.
greeting-not-sent-again = Bitte senden Sie ihn noch einmal: /class, dann „{ $button }“.
