/** Commands as people see them in the chat's menu. */
export const COMMANDS = [
  { command: 'today', description: 'Today’s drill again' },
  { command: 'time', description: 'Another evening time: /time 18:15' },
  { command: 'show', description: 'Clip, pictures or words only' },
  { command: 'class', description: 'Teachers: your class' },
  { command: 'newclass', description: 'Teachers: make a class' },
  { command: 'undo', description: 'Teachers: take back a change' },
  { command: 'stop', description: 'Stop all messages' },
  { command: 'mydata', description: 'What is kept about your child' },
  { command: 'erase', description: 'Erase it' },
  { command: 'help', description: 'What this bot does' },
] as const;
