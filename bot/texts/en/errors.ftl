# Answers to what cannot be done. Each is shown over a chat: at most 200 characters.

# A setting that is out of range.
errors-invalid-title = A title has 1 to { $most } characters. Please send a shorter one.
errors-invalid-zone = I do not know that time zone. Send one like Africa/Johannesburg or Europe/London.
errors-invalid-weekdays = At least one school day is needed. Choose another one first.
errors-invalid-evening-time = The evening time is from { $from } to { $to }. Please send a time in between.
errors-invalid-nudge-time = The nudge is sent at { $latest } at the latest. Please send an earlier time.
errors-invalid-nudge-too-early = The nudge comes at least { $minutes } minutes after the evening time. Change the other time first.
errors-invalid-number-of-children = A class has at most { $most } children. Make a second class for the others.
errors-invalid-break-title = A break’s name has 1 to { $most } characters. Please send a shorter one.
errors-invalid-number-of-breaks = At most { $most } breaks can be added at once. Leave some out.
errors-invalid-country = There are no holidays for that country. Choose another one.
errors-invalid-break-order = A break’s last day is not before its first. Please send the break again.
errors-invalid-book-title = A workbook title has 1 to { $most } characters. Please send a shorter one.
errors-invalid-page = Pages are from 1 to { $most }. Please send the workbook again.
errors-invalid-page-order = The first page comes before the last page. Please send the workbook again.
errors-invalid-pages-a-day = Pages a day are from 1 to { $most }. Please send the workbook again.
errors-invalid-number-of-books = At most { $most } workbooks stand in a line. Put one away first.
errors-invalid-page-of-the-book = That page is not in the workbook. Please send one that is.
errors-invalid-pages = That many pages in one evening cannot be stored. Tap a smaller number.
errors-invalid-way = There is no such way to show the cards. Send /show and choose one.
errors-invalid-curriculum = I do not know that curriculum. Open the week plan and choose again.
errors-invalid-grade = That curriculum has no such grade. Open the week plan and choose again.
errors-invalid-greeting-text = A greeting in writing has 1 to { $most } characters. Please send another one.
errors-invalid-greeting-days = A greeting’s last day is not before its first. Choose its week again.
errors-invalid-term-weeks = A term has from { $least } to { $most } weeks. Take another week out first.
errors-invalid-only-week = This is the term’s only week. End the term instead, from its screen.
errors-invalid-week-plan = This plan cannot be used as it stands. Open the week plan and choose again.
errors-invalid-language = I do not speak that language. Send /language and choose one.
errors-invalid-pause = A pause is { $most } days at most, and its last day is still to come. Send /pause and choose again.
errors-invalid-drill-days = The drill comes on one day at least. Send /days and choose, or /pause for a rest.
errors-invalid-switch = There is no such setting. Send /settings and choose again.
errors-invalid-relation = That is none of the answers. Tap one of the buttons.
errors-invalid-sibling-age = That age cannot be chosen. Tap one of the ages on the buttons.
errors-invalid = That value cannot be used.

# What is not there, or not the sender's. None of them may tell whether a thing of somebody else exists.
errors-not_found-message = This button is on somebody else’s message. Nothing was changed.
errors-not_found-slip = This join link is not valid. It may have been replaced by a newer one. Please ask the teacher for a new link.
errors-not_found-teacher-invitation = This invitation is not valid any more. Please ask whoever gave it to you for a new one.
errors-not_found-co-teacher = That co-teacher has left the class already.
errors-not_found-evening = This drill is not yours to mark, or not any more. Nothing was changed.
errors-not_found-break = That break is gone already.
errors-not_found-book = That workbook is put away, or it is not yours to change.
errors-not_found-column = That file has no such column. Send the file again.
errors-not_found-erasure = That is not yours to change, or it is gone already. Nothing was changed.
errors-not_found-act = There is nothing to take back here, or it is not yours to take back.
errors-not_found-draft-plan = There are no changes to use.
errors-not_found-term = There is no term in use any more. Open the week plan.
errors-not_found-term-week = The term has no such week any more. Open the term again.
errors-not_found-account = I do not know you here yet. Open the link you were given first.
# For whoever runs the bots.
errors-not_found-bot = That bot has not run here yet. Start it once, then try again.
# $greeting is the label of a button.
errors-not_found-greeting = That greeting is not in use any more. Open { $greeting } again to see the one that is.
errors-not_found = That is not here any more, or it is not yours to change.

# What something else stands against.
errors-conflict-lead-only = Only the lead teacher of the class can do that. Nothing was changed.
errors-conflict-lead-leaves = The lead teacher cannot leave. Hand the class over first, or archive it. Nothing was changed.
errors-conflict-week-plan = Another week plan was put in use since. Nothing was changed: please look at the plan in use.
errors-conflict-undo = That can no longer be taken back: something else has changed since. Nothing was changed now.
errors-conflict-archived-class = The child is in a class that was archived. Nothing was changed. Take the archiving back first: send /undo.
errors-conflict-nickname-in-the-class = Another child of that class has this nickname. Nothing was changed. Rename one of the two first.
errors-conflict-book-title = A workbook with that title is in line already. Tap it to change it, or send another title.
# $undo is the label of a button.
errors-conflict-erasure = The class is full, or another child has this nickname by now. Please ask the teacher to make room, then tap { $undo } again.
errors-conflict-helper = You have joined this child already. Send /today for today’s drill.
errors-conflict-term = Another term was put in use since. Nothing was changed.
errors-conflict-term-weeks = The term is full by now, so the week does not fit back in. Take another week out first.
errors-conflict-nickname = One of these nicknames is in the class already. Nothing was added. Please send the list again.
errors-conflict-share = That has changed since, so no link was made. Send /share to see how it stands.
errors-conflict = That is there already.

# What is too late.
errors-expired-slip = This join link is too old. Please ask the teacher for a new one.
errors-expired-undo = That was more than a day ago and can no longer be taken back.
errors-expired = That day is over. Send /today for today’s drill.
errors-used_up = This join link has been used as often as it may be. Please ask the teacher for a new one.

errors-our-fault = Something went wrong on our side. Nothing you did is lost. Please try again in a minute.
errors-trying-again = That did not work at once. I am trying again.
errors-stale-button = That button is from an older message. Send /today or /class for a fresh one.
