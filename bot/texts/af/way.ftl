# Not checked by a native speaker.
way-clip = Videogreep
way-pictures = Prente
way-single = Een vir een
way-words = Net woorde

way-which = Hoe moet die kaarte gewys word?
way-about-clip = { $way }: ’n kort video, kaart ná kaart, omtrent 250 kB per aand.
way-about-pictures = { $way }: al die kaarte van ’n deel gelyk, omtrent 100 kB per aand.
way-about-single = { $way }: een kaart op ’n slag, sonder tyd, met die antwoord wanneer u dit vra, omtrent 80 kB per aand.
way-about-words = { $way }: kaarte as teks, prente net vir horlosies, minder as 60 kB per aand.
way-untimed = Vir { $children }, sonder tyd: prente in plaas van ’n videogreep.
way-from-next = U keuse geld vanaf die volgende skerm, net op hierdie foon.
way-chosen = { $way }, vanaf die volgende skerm.
