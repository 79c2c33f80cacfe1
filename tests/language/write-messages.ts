import { writeFileSync } from 'node:fs';
import { fluentFiles } from './fluent-files.ts';
import { messageTypes } from './message-types.ts';

// What `npm run texts` runs after a change of an English text: the compiler then knows the new keys and variables.
const files = fluentFiles('en');
for (const { name, junk } of files) {
  for (const text of junk)
    process.stderr.write(`bot/texts/en/${name} cannot be read here:\n${text}\n`);
}
const path = new URL('../../bot/language/messages.ts', import.meta.url);
writeFileSync(path, messageTypes(files.flatMap(({ messages }) => messages)));
