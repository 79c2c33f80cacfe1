# Not checked by a native speaker.
gloss-beside = { $text } ({ $meaning })
gloss-means = „{ $text }“ heißt „{ $meaning }“.
