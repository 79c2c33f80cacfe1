# One child's page, for its teacher: its own past only.
child-page-none = No evening to tell of yet.
# $days counts the school days; $first is a short date: Mon 14 Sept.
child-page-practised = { $days ->
    [one] Practised on { $practised } of { $days } school day since { $first }.
   *[other] Practised on { $practised } of { $days } school days since { $first }.
  }
# $said are how the evenings ended, as below, with semicolons between.
child-page-week = Last seven days: { $said }.
# $days are short weekdays: Mon and Wed.
child-page-week-practised = practised { $days }
child-page-week-not_today = not today { $days }
child-page-week-silent = no answer { $days }
child-page-week-unsent = not delivered { $days }

# $steps and $facts are lists with semicolons.
child-page-sure = Sure of: { $steps }.
child-page-meeting = Still meeting: { $facts }.
# $told is a strand's tally or several, with semicolons between.
child-page-right = Right of asked in that time: { $told }.
child-page-tally = { $strand } { $right } of { $asked }
child-page-caution = The helper’s marks, beside this child’s own past only. No test and no diagnosis.

# The child's helpers. $day is when one was last heard from.
child-page-family-none = Family: nobody has joined yet.
child-page-family-left = Family: the helper has left.
child-page-family-unheard = { $helpers ->
    [one] Family: { $helpers } helper, not heard from yet.
   *[other] Family: { $helpers } helpers, not heard from yet.
  }
child-page-family-heard = { $helpers ->
    [one] Family: { $helpers } helper, last heard from on { $day }.
   *[other] Family: { $helpers } helpers, last heard from on { $day }.
  }
child-page-family-unreached-unheard = { $helpers ->
    [one] Family: { $helpers } helper, messages no longer arrive, not heard from yet.
   *[other] Family: { $helpers } helpers, messages no longer arrive, not heard from yet.
  }
child-page-family-unreached-heard = { $helpers ->
    [one] Family: { $helpers } helper, messages no longer arrive, last heard from on { $day }.
   *[other] Family: { $helpers } helpers, messages no longer arrive, last heard from on { $day }.
  }

# Facts to say aloud together, with their answers. $child is "3. Wren".
child-page-say = { $child }: to say aloud together
child-page-say-how = The least sure first. One minute is plenty: say it, say it again, go on.
child-page-say-none = Nothing has been marked yet.

child-page-books-done = Workbook: all done.
child-page-book = Workbook: { $book }, at page { $page } of { $last }.
