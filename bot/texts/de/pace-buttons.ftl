# Not checked by a native speaker.
pace-buttons-every-day = Jeden Schultag
pace-buttons-start-again = Jetzt weitermachen
pace-buttons-until = Bis { $day }
pace-buttons-one-week = Eine Woche
pace-buttons-two-weeks = Zwei Wochen
pace-buttons-other-day = Bis zu einem anderen Tag
pace-buttons-fewer = Weniger Abende
pace-buttons-keep = Täglich lassen: { $who }
pace-buttons-let-go = Nicht mehr: { $who }
