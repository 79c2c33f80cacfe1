-book-questions-shape = the title, its first and last page, and the pages a day
# A workbook as it is typed. The title is an invented one.
book-questions-example = Pebble Path 1-48 2
book-questions-new = Send the next workbook: { -book-questions-shape }, like this:
book-questions-new-own = Send { $name }’s own workbook: { -book-questions-shape }, like this:
book-questions-change = Send it anew: { -book-questions-shape }. Now it is:
# $typed is what somebody wrote, in quotation marks.
book-questions-bad-book = I could not read { $typed } as a workbook. Send { -book-questions-shape }, like this:

# A sentence that stands behind the next three. The word for "done" is one that bot/input/page-text.ts reads.
book-questions-range = Send a page from { $first } to { $last }, or “done”.
book-questions-page-of-class = Which page of { $book } is the class’s next? { $range }
book-questions-page-of-child = Which page of { $book } is { $name }’s next? { $range }
book-questions-bad-page = { $typed } is no page of { $book }. { $range }
book-questions-further = Children who are further on stay where they are.

# $pages is "pages 1 to 48"; $aDay is how many pages a day.
book-questions-added = { $book } is in line: { $pages }, { $aDay } a day. It counts from the next evening.
book-questions-changed = Saved. It counts from the next evening; nobody loses a page.

# Where somebody is in a workbook; stands as $reached in the messages below.
book-questions-reached = page { $page } of { $book } is next
book-questions-reached-end = { $book } is done
book-questions-set = { $name }: { $reached }. It counts from the next evening.
book-questions-set-class = { $moved ->
    [one] { $moved } child: { $reached }. It counts from the next evening.
   *[other] { $moved } children: { $reached }. It counts from the next evening.
  }
book-questions-set-already = Every child was there already: { $reached }.
book-questions-stay = { $further ->
    [one] { $further } child was further on and stays there.
   *[other] { $further } children were further on and stay there.
  }
