general-text-only = I can only read text and taps. Send /help to see what I can do.
general-private-only = Please write to me in a private chat. Children’s results never go to a group.
