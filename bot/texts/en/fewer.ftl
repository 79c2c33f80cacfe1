# { $title } is a class.
fewer-title = { $title }: fewer evenings
fewer-title-paged = { $title }: fewer evenings, page { $page } of { $pages }
# { $who } is a number and a nickname: 4. Robin.
fewer-announced-three = { $who }: no answer for two weeks. From { $day } on three evenings a week.
fewer-announced-one = { $who }: no answer for two weeks. From { $day } on one evening a week.
fewer-line = { $who }: { $words }
fewer-words-announced-three = three evenings a week from { $day }
fewer-words-announced-one = one evening a week from { $day }
fewer-words-three = three evenings a week, as nobody answered
fewer-words-one = one evening a week, as nobody answered
fewer-words-kept = every school day, as the teacher keeps it
fewer-words-paused = paused until { $day }
fewer-words-days = { $days } only, the family’s choice
fewer-hint = Keep daily, and the drill comes every school day all the same. The family can have that by one tap, too. A call often does more.
fewer-none = Nobody just now: the drill comes to every family on every school day.
# { $list } has children with how often the drill comes.
fewer-digest = Fewer evenings: { $list }.
fewer-kept = The drill comes every school day, until the family answers again.
fewer-let-go = Fewer evenings will come from { $day } on, unless the family answers.
