# Small, beside the heads of a printed grid: what its figures are.
digest-page-grid-note = figures: share right, in %
# The first line on the printed page, the class's name stands above it. $headline is that of the digest.
digest-page-answer = { $headline }.
# The second line; $ended says how the evenings ended.
digest-page-evenings = { $ended }.
digest-page-sent = The week on one page. Names of children are on it: print it for yourself.
