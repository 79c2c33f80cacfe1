# How a drill's cards are shown: labels of buttons.
way-clip = Clip
way-pictures = Pictures
way-single = One by one
way-words = Words only

way-which = How shall the cards be shown?
# $way is the label of that way. kB stays as it is.
way-about-clip = { $way }: a short video, card after card, about 250 kB an evening.
way-about-pictures = { $way }: all cards of a part at once, about 100 kB an evening.
way-about-single = { $way }: a card at a time without timing, its answer when you ask for it, about 80 kB an evening.
way-about-words = { $way }: cards as text, pictures of clocks only, under 60 kB an evening.
# $children are nicknames.
way-untimed = For { $children } without timing: pictures instead of a clip.
way-from-next = Your choice counts from the next screen, on this phone only.
way-chosen = { $way }, from the next screen.
