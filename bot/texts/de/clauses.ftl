# Not checked by a native speaker.
clauses-between = { "; " }
clauses-and-more = { $shown }; und { $more } weitere
