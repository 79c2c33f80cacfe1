languages-which = Which language shall I speak with you?
languages-scope = The cards stay in the language of the class. Where they need it, their meaning stands beside them.
# Shown in every language but English.
languages-unchecked = This translation has not been checked by a native speaker yet. If something reads oddly, please tell the class teacher.
languages-which-class = In which language does the class do its maths?
languages-class-scope = Cards, number words and clocks are in it, whatever language a family has chosen for the rest. Cards that are out already change with the next screen.
# { $language } is a language’s name for itself: Deutsch.
languages-cards-in = Cards: { $language }
