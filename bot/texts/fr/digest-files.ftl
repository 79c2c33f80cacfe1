# Not checked by a native speaker.
digest-files-nothing = Il n’y a encore rien à dessiner : aucun enfant de cette classe ne s’est exercé ces jours-ci.
digest-files-no-picture = Je n’ai pas pu dessiner cette image. Le message et le tableau disent la même chose ; servez-vous-en, s’il vous plaît.
