# Not checked by a native speaker.
help-first-class = Créons votre première classe.
help-first-class-takes = Cela prend environ trois minutes : un nom, un fuseau horaire et les surnoms des enfants. Tout peut être changé ensuite.

help-stage-no_children = Ensuite : ajoutez les enfants. Envoyez leurs surnoms, un par ligne, ou un fichier.
help-stage-no_plan = Ensuite : choisissez ce qui est travaillé. Vous pouvez partir des étapes habituelles du niveau.
help-stage-nobody_joined = Ensuite : donnez à chaque famille son feuillet. Dès que quelqu’un a rejoint la classe, les séances commencent d’elles-mêmes.
help-running = Tout est en marche. La prochaine séance part le { $day } à { $time }.
help-waiting = { $children ->
    [one] { $children } enfant n’a encore personne pour l’aider : de nouveaux feuillets sont sous « { $print } ».
   *[other] { $children } enfants n’ont encore personne pour les aider : de nouveaux feuillets sont sous « { $print } ».
  }
help-classes = Vous avez { $classes } classes.
help-which-class = De laquelle s’agit-il ?
help-command-class = /class · plan, enfants, congés, bilan
help-command-newclass = /newclass · une classe de plus
help-command-undo = /undo · défaire un changement du dernier jour

help-you-help = Vous aidez { $children }.
help-drill-here = { $child } : la séance du jour est là, /today la montre.
help-drill-comes = { $child } : la séance arrive d’elle-même, { $days } à { $time }.
help-command-today = /today · la séance du jour, à nouveau
help-command-time = /time 18:00 · une autre heure, dès le prochain soir
help-command-show = /show · clip, images ou texte seul, pour moins de données ; /settings · tout le reste
help-command-stop = /stop · arrêter tout de suite ; /mydata et /erase · une copie, ou ne rien garder
help-not-asked = Je n’attendais pas de message à l’instant, je n’ai donc rien changé.

help-still-waiting = J’attends encore une réponse.
help-awaited-new_title = Envoyez le nom de la nouvelle classe ou touchez « { $cancel } ».
help-awaited-new_zone = Envoyez le fuseau horaire de la nouvelle classe, comme Europe/London, ou touchez « { $cancel } ».
help-awaited-title = Envoyez le nouveau nom de la classe ou touchez « { $cancel } ».
help-awaited-zone = Envoyez le fuseau horaire de la classe, comme Europe/London, ou touchez « { $cancel } ».
help-awaited-roster = Envoyez les surnoms des enfants, un par ligne, ou un fichier, ou touchez « { $cancel } ».
help-awaited-evening = Envoyez l’heure de la séance, comme 17:30, ou touchez « { $cancel } ».
help-awaited-nudge = Envoyez l’heure du rappel, comme 19:00, ou touchez « { $cancel } ».
help-awaited-digest = Envoyez l’heure de votre bilan, comme 20:00, ou touchez « { $cancel } ».
help-awaited-break = Envoyez les jours du congé et son nom, ou touchez « { $cancel } ».
help-awaited-greeting = Envoyez votre petit mot : un texte, un message vocal ou une vidéo, ou touchez « { $cancel } ».
help-awaited-book_new = Envoyez le cahier : son titre, sa première et sa dernière page, et les pages par jour, ou touchez « { $cancel } ».
help-awaited-book_change = Envoyez de nouveau le cahier : son titre, sa première et sa dernière page, et les pages par jour, ou touchez « { $cancel } ».
help-awaited-book_page = Envoyez la page du cahier, ou « terminé », ou touchez « { $cancel } ».
help-awaited-nickname = Envoyez le nouveau surnom de l’enfant ou touchez « { $cancel } ».
help-awaited-pause = Envoyez le jour où la séance doit revenir, comme 12 octobre, ou touchez « { $cancel } ».
help-awaited-recording = Touchez ci-dessus à quoi sert votre enregistrement, ou touchez « { $cancel } ».
help-awaited-file = Touchez ci-dessus pour quelle classe est votre liste, ou touchez « { $cancel } ».
help-awaited-file_list = Touchez ci-dessus pour ajouter les enfants de votre liste, ou touchez « { $cancel } ».
