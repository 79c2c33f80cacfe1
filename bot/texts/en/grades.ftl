# Short names of curricula, which fit on a button beside a grade.
grades-england = England
grades-ccss = Common Core
grades-caps = South Africa
grades-acara = Australia

# "Year 2, England". $grade is written as its curriculum writes it.
grades-name = { $grade }, { $curriculum }

grades-title = { $class }: usual steps
grades-now = Now: { $grade }.
grades-none = Now: no grade, every step alike.
grades-only-sorts = This only sorts the steps you are shown: your school’s own curriculum decides.
grades-which-curriculum = Which curriculum is nearest to yours?
grades-which = { $curriculum }: which grade?
