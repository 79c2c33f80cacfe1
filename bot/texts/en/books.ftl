books-title = { $title }: workbooks
# A workbook in the list; $settings is the next message.
books-line = { $number }. { $title }: { $settings }
# $pages is "pages 1 to 48"; $aDay is how many pages a day.
books-settings = { $pages }, { $aDay } a day
books-none = None yet. Evenings ask for no pages.
books-one = Tap it to change it. Add the next one in time: whoever is done goes on by itself.
books-several = Whoever has done one goes on to the next. Tap a workbook to change it.
books-own = { $count ->
    [one] { $count } child has a book of its own, which comes first.
   *[other] { $count } children have books of their own, which comes first.
  }

books-place = { $settings }. Number { $place } of { $inLine }.
# How many children.
books-children = Children in it: { $begun }. Done: { $done }. Not begun: { $notBegun }.
books-counts-from = What you change counts from the next evening. Nobody loses a page.
books-tap-pages = Tap how many pages a day:
books-too-early = Too early to say when: half of the children need { $evenings } evenings with an answer about pages.
# $half and $nearlyAll say when: "done", "about Tue 15 Sept" or the next message.
books-finish = Half of the class: { $half }. Nine in ten: { $nearlyAll }.
books-never = not within a year
books-own-pace = At their own pace.
books-own-pace-of = From { $known } of { $children } children, at their own pace.

books-child = { $settings }. { $name }’s own; it comes before the class’s.
books-child-done = Done.
books-child-page = On page { $page } of { $last }.

books-gone = That workbook is put away already.
books-no-book = There is no workbook to set a page in. Add one first.
