joining-ask-relation = Who are you to { $name }?
# $age is the age from which on a brother or sister may help: the school chooses it.
joining-relation-kept = Kept for your family alone: no teacher sees it. A brother or sister helps from { $age } on, by the school’s choice.
joining-parent = Parent or guardian
joining-sibling = Brother or sister, { $age } or over
joining-adult = Another adult
joining-rather-not = Rather not say
joining-keep = Keep as it is
joining-ask-time = When shall the drill come?
joining-time-now = Now at { $time }, for all children you help.
joining-time-other = Another time? Send it like this: /time 18:15
joining-all-set = All set.
# $days are weekdays: Mon to Fri.
joining-comes = { $name }’s drill comes { $days } at { $time }.
joining-change = /settings changes any of this, /stop ends it. Nobody asks why.
joining-leave-whom = Stop helping whom?
joining-leave-names = You help { $names }.
joining-leave-effect = No more messages come about a child you stop for, and your agreement for it is withdrawn.
joining-leave-erase = What was marked stays with the class. Shall it be deleted too? Then send /erase first.
joining-leave-one = Stop for { $name }
joining-leave-all = Stop for all of them
joining-left-one = Done: no more messages about { $name } will come. Thank you for the time you gave.
joining-others-go-on = { $names }: the drill goes on as before.
joining-come-back = To help again, open your link once more or ask the teacher for a new one.
