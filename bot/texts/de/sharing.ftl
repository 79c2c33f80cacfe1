# Not checked by a native speaker.
sharing-ask = Soll eine weitere erwachsene Person { $name } helfen?
sharing-what = Ein Link öffnet sich einmal, innerhalb von { $days } Tagen. Wer ihn öffnet, liest den Hinweis und stimmt zu, bekommt dann die Übungen für { $name } und sieht, was markiert ist.
sharing-helpers = { $count ->
    [one] { $name } hat jetzt eine Begleitperson. Die Lehrkraft sieht die Zahl, keinen Namen.
   *[other] { $name } hat jetzt { $count } Begleitpersonen. Die Lehrkraft sieht die Zahl, keine Namen.
  }
sharing-open = Ein Link von Ihnen ist bis { $until } offen. Ein neuer tritt an seine Stelle.
sharing-not-sibling = Einen Link für noch jemanden gibt ein Elternteil oder eine andere erwachsene Person. Bitte dort fragen.
sharing-many = { $name } hat { $most } Begleitpersonen, mehr geht auf diesem Weg nicht. Die Lehrkraft kann noch einen Zettel ausgeben.
sharing-week = { $most } Links lassen sich in der Woche weitergeben, und die dieser Woche sind vergeben. Die Lehrkraft kann noch einen Zettel ausgeben.
sharing-whom = Wem soll eine weitere erwachsene Person helfen?
sharing-names = Sie helfen { $names }.
sharing-link = Für noch eine Begleitperson von { $name }
sharing-pass-on = Geben Sie diesen Link einer erwachsenen Person, die Sie gut kennen, und sonst niemandem:
sharing-until = Er öffnet sich einmal, bis { $until }. /stop beendet Ihren eigenen Teil, der andere geht weiter.
sharing-make = Link machen
