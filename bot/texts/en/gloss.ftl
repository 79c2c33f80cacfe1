# { $text } is in the language of the class, { $meaning } in the reader’s.
gloss-beside = { $text } ({ $meaning })
gloss-means = “{ $text }” means “{ $meaning }”.
