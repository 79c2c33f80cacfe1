# Not checked by a native speaker.
moved-heading = { $child } ist jetzt in { $class }.
moved-practises = Ab dem nächsten Abend wird geübt, was { $class } übt. Die Übung kommt { $days } um { $time } Uhr.
moved-no-plan = Die Übung kommt, sobald die Lehrkraft einen Plan gemacht hat, dann { $days } um { $time } Uhr.
moved-kept = Sie müssen nichts tun. Was bisher markiert wurde, bleibt erhalten, und die Lehrkräfte dort sehen es jetzt.
