# In the chat's menu, beside the commands: a few words each.
commands-today = Today’s drill again
commands-time = Another evening time: /time 18:15
commands-show = Clip, pictures or words only
commands-settings = Your settings
commands-language = Another language
commands-days = Days on which the drill comes
commands-pause = Pause the drill
commands-share = A link for another adult
commands-class = Teachers: your class
commands-newclass = Teachers: make a class
commands-undo = Teachers: take back a change
commands-stop = Stop all messages
commands-mydata = What is kept about your child
commands-erase = Erase it
commands-help = What this bot does
