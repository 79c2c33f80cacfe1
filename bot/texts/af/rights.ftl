# Not checked by a native speaker.
rights-erasing-for-helper = Alles wat oor { $child } bewaar is, word uitgevee.
rights-another-asked = ’n Ander helper van die kind het dit gevra. Geen oefeninge kom meer nie.
rights-until-then = Vir een dag kan wie dit gevra het, dit terugneem. Tot dan stuur /mydata vir u ’n kopie.
rights-kept-for-helper = { $child } word tog nie uitgevee nie.
rights-took-it-back = Wie dit gevra het, het dit teruggeneem. Die oefeninge kom soos voorheen.

rights-erasing-for-teacher = No. { $number } van { $class } word uitgevee, soos die gesin dit wil hê.
rights-off-the-list = Die kind is nou van die lys af. Oor ’n dag is alles wat oor die kind bewaar is, weg; u hoef niks te doen nie.
rights-kept-for-teacher = No. { $number } van { $class } is weer op die lys.
rights-family-took-back = Die gesin het die versoek teruggetrek. Niks het verlore gegaan nie.

rights-data-of = Alles wat oor { $child } bewaar word
rights-two-files = Die tabel maak in ’n sigblad oop; die ander lêer is dieselfde vir programme (JSON).
rights-chat-is-yours = Boodskappe in hierdie klets is u eie; u besluit self of u dit uitvee.

rights-which-child = Vee uit wat oor ’n kind bewaar word
rights-whose = Wie s’n? U help { $children }.
rights-ask = Vee alles oor { $child } uit?
rights-ask-at-once = Dadelik: geen oefeninge meer nie, vir geen helper nie. Die kind is van die klas se lys af.
rights-ask-after-a-day = Ná ’n dag: bynaam, uitslae, bladsye, toestemmings en u rekening hier word vir goed uitgevee.
rights-ask-others = Ander helpers en die onderwyser hoor daarvan, sonder redes. Papier en kletsboodskappe word nie uitgevee nie.
rights-ask-copy = Wil u eers ’n kopie hê? Stuur /mydata.

rights-erasing = { $child } word uitgevee.
rights-gone-in-a-day = Niks word meer gestuur nie. Oor ’n dag is alles weg.
rights-undo = Tot dan bring “{ $undo }” alles terug, en /mydata stuur ’n kopie.
rights-erasing-already = { $child } word reeds uitgevee.
rights-only-they = ’n Ander helper het dit gevra. Net daardie helper kan dit terugneem, vir een dag.
rights-copy-until-then = /mydata stuur tot dan vir u ’n kopie.
rights-stays = { $child } bly.
rights-nothing-lost = Niks het verlore gegaan nie. Die oefeninge kom soos voorheen.
rights-not-erased = Niks is verander nie.
rights-nothing-held = Niks oor ’n kind word hier vir u bewaar nie. As u ’n kind help, maak eers u skakel oop.

rights-operator-erased = Die kind { $child } is uitgevee, en elke helper sonder ’n ander kind.
rights-operator-no-child = Daar is geen kind { $child } nie. Niks is verander nie.
