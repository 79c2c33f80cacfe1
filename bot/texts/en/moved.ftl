moved-heading = { $child } is in { $class } now.
# $days is "Mon to Fri" or "Mon and Wed"; $time is a time of day.
moved-practises = From the next evening on, the drill is what { $class } practises. It comes { $days } at { $time }.
moved-no-plan = The drill comes as soon as the teacher has made a plan, then { $days } at { $time }.
moved-kept = You need to do nothing. What was marked so far is kept, and the teachers there see it now.
