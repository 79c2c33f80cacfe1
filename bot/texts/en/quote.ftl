# What somebody typed, shown back.
quote-typed = “{ $text }”
