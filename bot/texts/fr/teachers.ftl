# Not checked by a native speaker.
teachers-title = { $class } : enseignants
teachers-alone = Vous, et personne d’autre.
teachers-you-lead = { $others ->
    [one] Vous et { $others } autre. Vous êtes responsable de la classe.
   *[other] Vous et { $others } autres. Vous êtes responsable de la classe.
  }
teachers-you-co = { $others ->
    [one] Vous et { $others } autre. Vous êtes co-enseignant.
   *[other] Vous et { $others } autres. Vous êtes co-enseignant.
  }
teachers-open-lead = Un lien pour transmettre la classe est ouvert jusqu’au { $day }.
teachers-open-co = Un lien pour un co-enseignant est ouvert jusqu’au { $day }.
teachers-lead-can = Chaque enseignant voit tout et fait tout. Inviter, retirer et archiver reviennent à l’enseignant responsable.
teachers-co-can = Ici, vous voyez tout et faites tout. Inviter, retirer et archiver reviennent à l’enseignant responsable.
teachers-no-names = Aucun nom n’est gardé : les co-enseignants se distinguent par leur jour d’arrivée.

teachers-link-lead = Pour transmettre { $class }
teachers-link-co = Pour un co-enseignant de { $class }
teachers-link-once = Pour une seule personne, une seule fois, sous { $days } jours. Je ne le montre que maintenant.
teachers-link-note-lead = Qui l’ouvre devient l’enseignant responsable. Vous restez co-enseignant jusqu’à votre départ.
teachers-link-note-co = Qui l’ouvre voit les surnoms et les résultats des enfants : transmettez-le avec précaution.
teachers-link-made = Un lien a été créé depuis ; il est plus bas. Si vous n’en voyez pas, touchez encore une fois.

teachers-remove = ✗ Co-enseignant { $number }, depuis { $day }
teachers-removed = C’est fait. Cette personne ne voit plus rien de la classe.
teachers-leave = Quitter { $class } ?
teachers-leave-note = Vous ne la verrez plus et ne recevrez plus de bilan. La classe continue. Pour revenir, il vous faudra un nouveau lien de l’enseignant responsable.
teachers-left = Vous avez quitté la classe.

teachers-archived = { $class } est dans les archives.
teachers-archived-now = Plus rien n’est envoyé, pas même les séances de ce soir. Dans une heure, chaque famille apprend une seule fois que les séances s’arrêtent.
teachers-archived-undo = « { $undo } » rétablit tout, pendant un jour. Avant la fin de l’heure, personne n’en sait rien. Après { $days } jours, les données des enfants sont supprimées.

teachers-joined-lead = Vous enseignez maintenant dans { $class }, comme enseignant responsable.
teachers-joined-co = Vous enseignez maintenant dans { $class }, comme co-enseignant.
teachers-joined-note-lead = Si quelqu’un vous l’a transmise, cette personne reste co-enseignante jusqu’à son départ.
teachers-joined-note-co = Vous pouvez tout faire ici, sauf inviter, retirer et archiver. Le bilan vous parvient aussi.

teachers-classes = Vos classes
teachers-classes-none = Aucune pour le moment. Créez-en une ou ouvrez le lien d’un collègue.
teachers-classes-page = { $classes } classes. Page { $page } sur { $pages }.
teachers-by-invitation = Ici, un enseignant a besoin d’une invitation. Demandez-la à la personne qui gère ce bot, ou demandez à un collègue un lien vers sa classe.
