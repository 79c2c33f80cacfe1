# Not checked by a native speaker.
books-title = { $title }: werkboeke
books-line = { $number }. { $title }: { $settings }
books-settings = { $pages }, { $aDay } per dag
books-none = Nog geen nie. Die aande vra geen bladsye nie.
books-one = Tik daarop om dit te verander. Voeg die volgende een betyds by: wie klaar is, gaan vanself daarmee voort.
books-several = Wie een klaar het, gaan na die volgende. Tik op ’n werkboek om dit te verander.
books-own = { $count ->
    [one] { $count } kind het ’n eie boek, wat eerste kom.
   *[other] { $count } kinders het eie boeke, wat eerste kom.
  }

books-place = { $settings }. Nommer { $place } van { $inLine }.
books-children = Kinders daarin: { $begun }. Klaar: { $done }. Nog nie begin nie: { $notBegun }.
books-counts-from = Wat u verander, tel vanaf die volgende aand. Niemand verloor ’n bladsy nie.
books-tap-pages = Tik hoeveel bladsye per dag:
books-too-early = Te vroeg om te sê wanneer: die helfte van die kinders moet elk { $evenings } aande met ’n antwoord oor bladsye hê.
books-finish = Die helfte van die klas: { $half }. Nege uit tien: { $nearlyAll }.
books-never = nie binne ’n jaar nie
books-own-pace = Teen hulle eie pas.
books-own-pace-of = Uit { $known } van { $children } kinders, teen hulle eie pas.

books-child = { $settings }. { $name } se eie; dit kom voor die klas s’n.
books-child-done = Klaar.
books-child-page = Op bladsy { $page } van { $last }.

books-gone = Daardie werkboek is reeds weggesit.
books-no-book = Daar is geen werkboek om ’n bladsy in te stel nie. Voeg eers een by.
