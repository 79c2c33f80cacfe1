# Not checked by a native speaker.
languages-which = In watter taal wil u met my gesels?
languages-scope = Die kaarte bly in die klas se taal. Waar nodig, staan die betekenis daarby.
languages-unchecked = Hierdie vertaling is nog nie deur ’n moedertaalspreker nagegaan nie. Klink iets vreemd, laat weet asseblief die onderwyser.
languages-which-class = In watter taal doen die klas wiskunde?
languages-class-scope = Kaarte, getalname en horlosies is daarin, watter taal ’n gesin ook al vir die res kies. Kaarte wat reeds gestuur is, verander met die volgende skerm.
languages-cards-in = Kaarte: { $language }
