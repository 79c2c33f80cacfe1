# Not checked by a native speaker.
roster-problems = Nog niks is bygevoeg nie. Maak dit asseblief reg en stuur die hele lys weer:
roster-line-long = Reël { $line }: { $value } het { $length } karakters, hoogstens { $most } is toegelaat. Maak dit korter.
roster-line-twice = Reël { $line }: { $value } staan ook op reël { $first }. Voeg by een van hulle ’n letter by.
roster-line-present = Reël { $line }: { $value } is reeds in die klas. Laat dit weg of voeg ’n letter by.
roster-row-long = Ry { $line }: { $value } het { $length } karakters, hoogstens { $most } is toegelaat. Maak dit korter.
roster-row-twice = Ry { $line }: { $value } staan ook in ry { $first }. Voeg by een van hulle ’n letter by.
roster-row-present = Ry { $line }: { $value } is reeds in die klas. Laat dit weg of voeg ’n letter by.
roster-and-more = en nog { $more }
roster-empty = Ek het geen byname daarin gekry nie.
roster-too-many = Dit is { $sent } byname; saam met die { $present } wat reeds daar is, is dit meer as { $most }.
roster-send-fewer = Niks is bygevoeg nie. Stuur minder, of maak ’n tweede klas.

roster-links = Een skakel vir elke kind. Gee vir elke gesin net sy eie.
roster-links-note = ’n Skakel werk vir hoogstens vier helpers, 60 dae lank. Ek hou geen kopie nie: ’n nuwe skakel vervang die oue.
roster-all-have = Elke kind het ’n helper. Om nog een by te voeg, maak ’n nuwe skakel vir daardie kind.
roster-without = { $children ->
    [one] { $children } kind het nie ’n helper nie.
   *[other] { $children } kinders het nie ’n helper nie.
  }
roster-make-links = Moet ek nuwe skakels maak? Skakels wat vroeër vir hierdie kinders uitgegee is, werk dan nie meer nie.
roster-links-made = Sedert dit gewys is, is skakels gemaak; hulle staan verder af. As geen lys gekom het nie, tik nog een keer.

roster-added = { $children ->
    [one] { $children } kind bygevoeg. Hoe gaan die gesinne aansluit?
   *[other] { $children } kinders bygevoeg. Hoe gaan die gesinne aansluit?
  }
roster-by-slip = { $button }: ’n briefie vir elke kind, op papier.
roster-by-link = { $button }: ’n skakel vir elke kind, om aan te stuur.
roster-not-yet = Niks word gemaak voordat u vra nie. Wat later gemaak word, vervang wat vroeër gemaak is.
roster-surname = Meer as een woord: { $nickname }. Asseblief net byname, geen vanne nie.
roster-surnames = Meer as een woord: { $nickname } en nog { $more }. Asseblief net byname, geen vanne nie.
