# Not checked by a native speaker.
clauses-between = { "; " }
clauses-and-more = { $shown }; y { $more } más
