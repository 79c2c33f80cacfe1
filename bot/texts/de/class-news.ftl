# Not checked by a native speaker.
class-news-ended = Das Üben in { $class } ist zu Ende.
class-news-no-more = Für { $children } kommen keine Übungen mehr. Sie müssen nichts tun.
class-news-thanks = Danke für jeden Abend. Fragen? Bitte wenden Sie sich an die Lehrkraft der Klasse.
class-news-resumed = Das Üben in { $class } geht doch weiter.
class-news-as-before = Die Übungen für { $children } kommen wie bisher. Die frühere Nachricht war ein Versehen.

class-news-archived = { $class } wurde von der leitenden Lehrkraft archiviert.
class-news-archived-undo = An Familien geht nichts mehr. Einen Tag lang kann jede Lehrkraft der Klasse das zurücknehmen: /undo.
class-news-back = { $class } ist wieder da: Das Archivieren war ein Versehen.
class-news-goes-on = Alles geht weiter.

class-news-new-lead = { $class } hat eine neue leitende Lehrkraft.
class-news-link-used = Ihr Link wurde benutzt. Sie bleiben als weitere Lehrkraft dabei; zum Verlassen senden Sie /class und tippen auf „{ $teachers }“.
