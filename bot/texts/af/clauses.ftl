# Not checked by a native speaker.
clauses-between = { "; " }
clauses-and-more = { $shown }; en nog { $more }
