# Not checked by a native speaker.
greeting-ask = Envoyez un message vocal ou une vidéo de { $seconds } secondes et { $megabytes } Mo au plus, ou un texte de { $characters } caractères au plus. Les familles le reçoivent tel quel. Vous le voyez d’abord, et rien ne part avant le prochain soir.
greeting-heading = { $class } : un petit mot de l’enseignant
greeting-none = { $class } : pas de petit mot
greeting-none-note = Un message vocal, une courte vidéo ou un texte de vous peut aller à chaque famille, juste avant sa séance.

greeting-title = { $class } : petit mot
greeting-text-first = Un texte, juste avant la première séance de la semaine de chaque famille.
greeting-text-every = Un texte, juste avant chaque séance.
greeting-voice-first = Un message vocal, juste avant la première séance de la semaine de chaque famille.
greeting-voice-every = Un message vocal, juste avant chaque séance.
greeting-video-first = Une vidéo, juste avant la première séance de la semaine de chaque famille.
greeting-video-every = Une vidéo, juste avant chaque séance.
greeting-over = Sa semaine est passée : il ne part plus. Choisissez une autre semaine pour l’envoyer à nouveau.
greeting-from = À partir du { $first }, jusqu’à ce que vous le retiriez.
greeting-on = Le { $day } seulement.
greeting-days = Du { $first } au { $last }, puis il s’arrête de lui-même.
greeting-other-bot = Il a été enregistré pour un autre compte de ce bot et n’est pas envoyé. Envoyez-le à nouveau, s’il vous plaît.
greeting-once = Il arrive une fois par famille, même avec deux enfants dans la classe.
greeting-week = Semaine du { $monday }
greeting-removed = Retiré. Il ne part plus.

greeting-use-voice = Utiliser ce message vocal comme petit mot de { $class } ?
greeting-use-video = Utiliser cette vidéo comme petit mot de { $class } ?
greeting-use-voice-which = Utiliser ce message vocal comme petit mot d’une classe ? Choisissez la classe.
greeting-use-video-which = Utiliser cette vidéo comme petit mot d’une classe ? Choisissez la classe.
greeting-not-used = Pas utilisé. Rien n’a changé.
greeting-used = C’est maintenant le petit mot de { $class }. Les familles le reçoivent ainsi :
greeting-gone = Cet enregistrement n’est plus en attente. Ouvrez « { $button } » pour voir ce qui sert, ou envoyez-le à nouveau.

greeting-bad-form = Je peux transmettre des messages vocaux et des vidéos ordinaires, pas de vidéos rondes ni de fichiers de musique.
greeting-bad-seconds = { $seconds ->
    [one] Cela dure { $seconds } seconde ; un petit mot en dure { $most } au plus.
   *[other] Cela dure { $seconds } secondes ; un petit mot en dure { $most } au plus.
  }
greeting-bad-megabytes = Cela fait environ { $megabytes } Mo ; un petit mot en fait { $most } au plus, car les familles paient leurs données.
greeting-please-send = Envoyez, s’il vous plaît, un message vocal ou une vidéo de { $seconds } secondes et { $megabytes } Mo au plus, ou un texte de { $characters } caractères au plus.
greeting-long = { $typed } compte { $length } caractères ; un petit mot en compte de 1 à { $most }. Envoyez-en un plus court, s’il vous plaît.
greeting-empty = Je n’y ai vu aucun mot. { $send }
greeting-not-passed = Le service de messagerie ne me laisse pas le transmettre. Enregistrez-le et envoyez-le à nouveau, s’il vous plaît.
greeting-not-sent = { $class } : votre petit mot n’a pas été envoyé
greeting-not-sent-why = Il a été enregistré pour un autre compte de ce bot et je ne peux pas le transmettre. Les séances sont parties comme d’habitude.
greeting-not-sent-again = Envoyez-le encore une fois, s’il vous plaît : /class, puis « { $button } ».
