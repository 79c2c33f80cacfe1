# $wait is "39 minutes". At most 200 characters.
limits-codes-paused = Too many codes that do not work came from you. Try again in { $wait }, or ask the teacher for a new link.
limits-left-out = A lot came from you at once, so I left some of it out.
limits-what-is-kept = What I answered is kept. Wait a moment, then send /today or /class to see where things stand.
