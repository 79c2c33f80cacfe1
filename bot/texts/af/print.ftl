# Not checked by a native speaker.
print-a4 = A4
print-letter = Letter
print-on = Druk { $paper }

print-title = { $title }: druk
print-slips-none = Briefies om aan te sluit: elke kind het ’n helper.
print-slips = { $missing ->
    [one] Briefies om aan te sluit: vir { $missing } kind sonder ’n helper. Skakels wat vroeër vir hierdie kind uitgegee is, werk dan nie meer nie.
   *[other] Briefies om aan te sluit: vir { $missing } kinders sonder ’n helper. Skakels wat vroeër vir hierdie kinders uitgegee is, werk dan nie meer nie.
  }
print-cards = Kaarte: dié van die weekplan, om uit te knip, met al die antwoorde.
print-sheets-none = Oefenblaaie: een sonder ’n naam.
print-sheets = { $offline ->
    [one] Oefenblaaie: vir { $offline } kind wie se gesin geen boodskappe kry nie, en een sonder ’n naam.
   *[other] Oefenblaaie: vir { $offline } kinders wie se gesinne geen boodskappe kry nie, en een sonder ’n naam.
  }
print-squares = Getalblokke: 1 tot 100 en 101 tot 200.

print-slips-sent = { $children ->
    [one] Briefies vir { $children } kind. Knip hulle los en gee elke gesin net hulle eie.
   *[other] Briefies vir { $children } kinders. Knip hulle los en gee elke gesin net hulle eie.
  }
print-slips-work = Hulle werk vir tot vier helpers, tot { $until }. Ek hou geen afskrif nie: nuwe briefies vervang hierdie.
print-cards-sent = Druk aan albei kante en draai oor die lang kant om: elke antwoord is agter sy kaart. Die antwoorde saam kom laaste.
print-sheet-sent = ’n Oefenblad sonder ’n naam.
print-sheets-sent = { $children ->
    [one] Oefenblaaie vir { $children } kind, en een sonder ’n naam. Gee elke gesin net hulle eie.
   *[other] Oefenblaaie vir { $children } kinders, en een sonder ’n naam. Gee elke gesin net hulle eie.
  }
print-squares-sent = Getalblokke, 1 tot 100 en 101 tot 200.

print-no-slips = Elke kind het ’n helper, of daar is nog geen kinders nie. Niks om te druk nie.
print-no-plan = Daar is nog geen weekplan in gebruik nie. Maak een onder “{ $button }” en druk dan.
print-no-days = Daar is hierdie of volgende week geen skooldag nie. Druk wanneer die vakansie amper verby is.

print-code-wrong = Dit lyk soos ’n aansluitkode, maar een letter of syfer is nie reg nie.
print-code-length = Dit lyk soos ’n aansluitkode, maar ek het { $letters } letters en syfers gelees; ’n kode het { $length }.
print-code-again = Vergelyk dit asseblief met die briefie en stuur dit weer. Die letters O, I, L en U word nooit gebruik nie.
