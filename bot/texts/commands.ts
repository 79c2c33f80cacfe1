import { say } from '../language/index.ts';

const COMMANDS = [
  'today',
  'time',
  'show',
  'settings',
  'language',
  'days',
  'pause',
  'share',
  'class',
  'newclass',
  'undo',
  'stop',
  'mydata',
  'erase',
  'help',
] as const;

/** Commands as people see them in the chat's menu, in the language of whoever reads. */
export function commands(): { readonly command: string; readonly description: string }[] {
  return COMMANDS.map((command) => ({ command, description: say(`commands-${command}`) }));
}
