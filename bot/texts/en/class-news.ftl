# To families.
class-news-ended = Practice in { $class } has ended.
# $children are nicknames.
class-news-no-more = No more drills come for { $children }. You need to do nothing.
class-news-thanks = Thank you for every evening. Questions? Please ask the class teacher.
class-news-resumed = Practice in { $class } goes on after all.
class-news-as-before = The drills for { $children } come as before. The earlier message was a mistake.

# To the class's other teachers.
class-news-archived = { $class } was archived by its lead teacher.
class-news-archived-undo = Nothing is sent to families any more. For a day any teacher of the class can take it back: /undo.
class-news-back = { $class } is back: it was archived by mistake.
class-news-goes-on = Everything goes on.

# To the teacher who led the class until now. $teachers is the label of a button.
class-news-new-lead = { $class } has a new lead teacher.
class-news-link-used = Your link was used. You stay as a co-teacher; to leave, send /class and tap { $teachers }.
