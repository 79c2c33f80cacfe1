# Not checked by a native speaker.
rights-erasing-for-helper = Tout ce qui est gardé sur { $child } est en cours d’effacement.
rights-another-asked = Une autre personne qui aide l’enfant l’a demandé. Plus aucune séance ne vient.
rights-until-then = Pendant un jour, la personne qui l’a demandé peut y revenir. D’ici là, /mydata vous envoie une copie.
rights-kept-for-helper = Finalement, rien n’est effacé pour { $child }.
rights-took-it-back = La demande a été retirée. Les séances viennent comme avant.

rights-erasing-for-teacher = Le n° { $number } de { $class } est en cours d’effacement, à la demande de la famille.
rights-off-the-list = L’enfant n’est plus sur la liste. Dans un jour, tout ce qui est gardé sur lui aura disparu ; vous n’avez rien à faire.
rights-kept-for-teacher = Le n° { $number } de { $class } est de nouveau sur la liste.
rights-family-took-back = La famille a retiré sa demande. Rien n’a été perdu.

rights-data-of = Tout ce qui est gardé sur { $child }
rights-two-files = Le tableau s’ouvre dans un tableur ; l’autre fichier contient la même chose pour les programmes (JSON).
rights-chat-is-yours = Les messages de cette conversation sont à vous ; c’est à vous de les effacer ou non.

rights-which-child = Effacer ce qui est gardé sur un enfant
rights-whose = Pour qui ? Vous aidez { $children }.
rights-ask = Tout effacer pour { $child } ?
rights-ask-at-once = Tout de suite : plus aucune séance, pour personne. L’enfant n’est plus sur la liste de la classe.
rights-ask-after-a-day = Après un jour : surnom, résultats, pages, accords et votre compte ici sont effacés pour de bon.
rights-ask-others = Les autres personnes qui aident et l’enseignant sont prévenus, sans explication. Le papier et les messages ne sont pas effacés.
rights-ask-copy = Voulez-vous d’abord une copie ? Envoyez /mydata.

rights-erasing = Effacement en cours pour { $child }.
rights-gone-in-a-day = Plus rien n’est envoyé. Dans un jour, tout aura disparu.
rights-undo = D’ici là, « { $undo } » fait tout revenir, et /mydata envoie une copie.
rights-erasing-already = L’effacement est déjà en cours pour { $child }.
rights-only-they = Une autre personne l’a demandé. Elle seule peut y revenir, pendant un jour.
rights-copy-until-then = D’ici là, /mydata vous envoie une copie.
rights-stays = { $child } reste.
rights-nothing-lost = Rien n’a été perdu. Les séances viennent comme avant.
rights-not-erased = Rien n’a été changé.
rights-nothing-held = Rien n’est gardé ici pour vous au sujet d’un enfant. Si vous aidez un enfant, ouvrez d’abord votre lien d’accès.

rights-operator-erased = L’enfant { $child } a été effacé, ainsi que chaque personne qui n’en aidait pas d’autre.
rights-operator-no-child = Il n’y a pas d’enfant { $child }. Rien n’a été changé.
