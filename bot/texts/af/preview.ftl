# Not checked by a native speaker.

preview-name = Voorskou
preview-draft = Voorskou: wat ’n gesin kry sodra u dit in gebruik neem. Niks wat u hier tik, word bewaar nie.
preview-plan = Voorskou: wat ’n gesin die volgende aand kry. Niks wat u hier tik, word bewaar nie.
preview-over = Die voorskou is verby. Niks daarvan is bewaar nie.
