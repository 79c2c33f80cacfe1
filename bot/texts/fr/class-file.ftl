# Not checked by a native speaker.
class-file-big = Ce fichier est trop gros pour une liste de classe : 1 Mo au plus, et rien d’autre dedans.
class-file-rows = Une liste de classe compte ici 500 lignes au plus ; une classe, { $most } enfants au plus.
class-file-columns = Une liste de classe compte ici 40 colonnes au plus. Ne gardez que celle des surnoms.
class-file-old = C’est un tableur dans un ancien format, ou protégé par un mot de passe.
class-file-unknown = Je ne peux pas lire ce fichier comme une liste de classe.
class-file-empty = Il n’y a rien dans ce fichier.
class-file-quote = Ligne { $row } : un guillemet est mal placé ou n’est pas fermé.
class-file-send = Rien n’a été ajouté. Envoyez un fichier XLSX ou CSV avec un surnom par ligne, ou collez les surnoms en texte, un par ligne.

class-file-which-class = Pour quelle classe est cette liste ?
class-file-see-first = Vous voyez les surnoms avant tout ajout.

class-file-nicknames = { $count ->
    [one] { $count } surnom pour { $class }
   *[other] { $count } surnoms pour { $class }
  }
class-file-column = Colonne { $letter }
class-file-column-headed = Colonne { $letter } { $heading }
class-file-preview = { $column } : { $names }
class-file-until-tap = Rien n’est ajouté tant que vous ne touchez pas le bouton.

class-file-problems = Rien ne peut encore être ajouté.
class-file-problems-in = { $column } :
class-file-mend = Corrigez le fichier et renvoyez-le, ou touchez « { $button } ».
class-file-no-names = { $column } : pas de surnoms ici.
class-file-no-names-do = Touchez « { $button } » ou envoyez un autre fichier.
class-file-too-many = { $sent ->
    [one] Cela fait { $sent } surnom ; avec les { $present } déjà là, c’est plus de { $most }.
   *[other] Cela fait { $sent } surnoms ; avec les { $present } déjà là, c’est plus de { $most }.
  }
class-file-shorten = Rien n’a été ajouté. Raccourcissez le fichier et renvoyez-le, ou créez une deuxième classe.

class-file-which-column = Dans quelle colonne sont les surnoms ?
class-file-names-only = { $most } caractères au plus chacun, pas de noms de famille.
class-file-column-button = { $letter } : { $shown }
class-file-column-empty = { $letter } : vide
class-file-add = { $count ->
    [one] Ajouter cet enfant
   *[other] Ajouter les { $count }
  }
class-file-gone = Cette liste n’est plus en attente : elle a été ajoutée, ou autre chose est venu après. Regardez sous « { $button } », ou renvoyez le fichier.
