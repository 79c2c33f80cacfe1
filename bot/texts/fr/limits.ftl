# Not checked by a native speaker.
limits-codes-paused = Vous avez envoyé trop de codes qui ne fonctionnent pas. Réessayez dans { $wait } ou demandez un nouveau lien à l’enseignant.
limits-left-out = Beaucoup de messages de vous sont arrivés d’un coup ; j’en ai laissé une partie de côté.
limits-what-is-kept = Ce à quoi j’ai répondu est gardé. Attendez un instant, puis envoyez /today ou /class pour voir où vous en êtes.
