# Not checked by a native speaker.
moved-heading = { $child } est maintenant dans { $class }.
moved-practises = À partir du prochain soir, on travaille ce que travaille { $class }. La séance arrive { $days } à { $time }.
moved-no-plan = La séance arrivera dès que l’enseignant aura fait un plan, puis { $days } à { $time }.
moved-kept = Vous n’avez rien à faire. Ce qui a été noté jusqu’ici est gardé, et les enseignants de cette classe le voient maintenant.
