# Not checked by a native speaker.

paper-child = kind { $number }
paper-page = bladsy { $page } van { $of }
paper-answers = Antwoorde
paper-name = Naam
paper-of = van { $cards }
paper-pages-done = Werkboekbladsye klaar
paper-from-page = vanaf bladsy { $page }
paper-adult = Volwassene
paper-how-to-mark = Die kind sê elke antwoord hardop. Skryf hoeveel reg was. ’n Punt wys net hoe een aand gegaan het.

paper-what-it-is = ’n Paar minute hoofrekene elke skooldag. Die kaarte kom na u foon; u tik wat gemis is.
paper-scan = Skandeer die vierkant met die foon se kamera en tik op Start.
paper-or-send = Of maak { $place } oop, tik op Start en stuur hierdie kode:
paper-until = Geldig tot
paper-this-family = Gee hierdie briefie net aan hierdie kind se gesin.
