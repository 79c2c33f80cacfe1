# A table of everything kept about a child, for a spreadsheet: a row a thing. These are its headings.
held-table-what = what
held-table-when = when
held-table-name = name
held-table-value = value
held-table-more = more

# The child. Nickname and number are worded in digest-table.
held-table-child = child
held-table-class = class
held-table-evening-time = evening time
held-table-left = left
held-table-erasing = being erased
# How its drills differ from the class's: by how many steps, and how else.
held-table-adjustment = adjustment
held-table-steps = steps
held-table-fewer = fewer cards
held-table-untimed = untimed
held-table-fewer-untimed = fewer cards untimed
held-table-slip = slip
held-table-uses-left = uses left
# $at is a day and time as YYYY-MM-DDThh:mm.
held-table-until = until { $at }
held-table-until-shared = until { $at }, passed on by a helper
held-table-own-book = own workbook
held-table-place = place in a workbook

# The helper who asked.
held-table-you = you
held-table-chat = chat account
held-table-language = language
held-table-way = how drills are shown
# $setting is the label of a switch.
held-table-setting = setting: { $setting }
held-table-on = on
held-table-off = off
held-table-relation = who you are to the child
held-table-month-picture = last monthly picture
# The next two frame a number: sent to you, about | 250000 | bytes.
held-table-data = sent to you, about
held-table-bytes = bytes
held-table-agreement = agreement
held-table-withdrawn = withdrawn { $at }
held-table-message = message

held-table-evening = evening
held-table-drill = drill
held-table-started = started
held-table-not-today = not today
held-table-stopped = stopped for today
# Parts and cards are counted from 1; a correction is a further revision; $way is "card" or "unmissed".
held-table-mark = mark
held-table-mark-more = part { $part }, card { $card }, { $way }, revision { $revision }
held-table-right = right
held-table-not-yet = not yet
held-table-run = counting run
held-table-run-more = part { $part }, of { $length } from { $start } in steps of { $step }, revision { $revision }
held-table-score = score
held-table-score-more = part { $part }, of { $asked }
held-table-pages-done = pages done
held-table-revision = revision { $revision }
# What follows from the marks for one sum. $model and $state belong to the program and are not translated.
held-table-memory = memory of a fact
held-table-memory-more = right { $right } of { $asked }, { $streak } in a row, { $model } { $state }

# Words that are stored as they are. How drills are shown, and how a mark was made:
held-table-code-clip = clip
held-table-code-pictures = pictures
held-table-code-single = single
held-table-code-words = words
held-table-code-card = card
# Only the missed cards were tapped, and this was none of them.
held-table-code-unmissed = unmissed
# Kinds of message, then how its sending ended:
held-table-code-greeting = greeting
held-table-code-evening = evening
held-table-code-reminder = reminder
held-table-code-nudge = nudge
held-table-code-moved = moved
held-table-code-class_stopped = class_stopped
held-table-code-class_resumed = class_resumed
held-table-code-erasing = erasing
held-table-code-kept_after_all = kept_after_all
held-table-code-fewer_evenings = fewer_evenings
held-table-code-planned = planned
held-table-code-attempting = attempting
held-table-code-sent = sent
held-table-code-failed = failed
held-table-code-unknown = unknown
# Who the helper is to the child:
held-table-code-parent = parent
held-table-code-sibling = sibling
held-table-code-adult = adult
