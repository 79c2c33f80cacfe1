book-places-title = { $title }: who is where
# $who is a number and a nickname.
book-places-no-book = { $who }: no workbook
book-places-all-done = { $who }: all done
# $finish is a date or one of the next two.
book-places-line = { $who }: { $book }, page { $page } of { $last }, { $finish }
book-places-too_early = too early to say
book-places-standing = no pages lately
book-places-no-children = No children yet.
book-places-dates = Dates say when it is done, at the child’s own pace.
book-places-dates-paged = Page { $page } of { $pages }. { book-places-dates }

book-places-child-title = { $name }: workbooks
book-places-next-page = { $book }: page { $page } of { $last } is next.
book-places-child-no-book = None. Evenings ask for no pages.
book-places-child-all-done = All are done.
# $pages may be a fraction, as 1.5; $weeks is never one.
book-places-pace = { $pages ->
    [one] { $pages } page an evening in the last { $weeks } weeks.
   *[other] { $pages } pages an evening in the last { $weeks } weeks.
  }
book-places-then = Then { $book }, from page { $page }.
book-places-counted = Pages are what the helpers tapped; where nobody did, none are counted.

book-places-child-too-early = Too early to say when it is done: it takes { $evenings } evenings with an answer about pages.
book-places-child-standing = No pages lately, so there is no date.
# $when is "about Tue 15 Sept" or "in more than a year".
book-places-finish = Done { $when }.
# $from and $until are dates, or the two below.
book-places-finish-range = Done { $when }; in 8 cases of 10 from { $from } to { $until }.
book-places-until-late = more than a year
