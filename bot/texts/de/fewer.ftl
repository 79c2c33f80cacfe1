# Not checked by a native speaker.
fewer-title = { $title }: weniger Abende
fewer-title-paged = { $title }: weniger Abende, Seite { $page } von { $pages }
fewer-announced-three = { $who }: zwei Wochen keine Antwort. Ab { $day } an drei Abenden in der Woche.
fewer-announced-one = { $who }: zwei Wochen keine Antwort. Ab { $day } an einem Abend in der Woche.
fewer-line = { $who }: { $words }
fewer-words-announced-three = ab { $day } drei Abende in der Woche
fewer-words-announced-one = ab { $day } ein Abend in der Woche
fewer-words-three = drei Abende in der Woche, weil niemand geantwortet hat
fewer-words-one = ein Abend in der Woche, weil niemand geantwortet hat
fewer-words-kept = jeden Schultag, weil die Lehrkraft es so lässt
fewer-words-paused = Pause bis { $day }
fewer-words-days = nur { $days }, von der Familie gewählt
fewer-hint = Mit „Täglich lassen“ kommt die Übung weiter jeden Schultag. Auch die Familie kann das mit einmal Tippen. Ein Anruf hilft oft mehr.
fewer-none = Zurzeit niemand: Die Übung kommt zu jeder Familie an jedem Schultag.
fewer-digest = Weniger Abende: { $list }.
fewer-kept = Die Übung kommt jeden Schultag, bis die Familie wieder antwortet.
fewer-let-go = Ab { $day } kommen weniger Abende, wenn die Familie nicht antwortet.
