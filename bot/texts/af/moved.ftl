# Not checked by a native speaker.
moved-heading = { $child } is nou in { $class }.
moved-practises = Vanaf die volgende aand is die oefening wat { $class } oefen. Dit kom { $days } om { $time }.
moved-no-plan = Die oefening kom sodra die onderwyser ’n plan gemaak het, dan { $days } om { $time }.
moved-kept = U hoef niks te doen nie. Wat tot dusver gemerk is, bly bewaar, en die onderwysers daar sien dit nou.
