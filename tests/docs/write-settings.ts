import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { envExample } from './env-example.ts';
import { withSettings } from './settings-in.ts';

// Writes the table of settings into the README anew, and the example of a file of settings.
const README = fileURLToPath(new URL('../../README.md', import.meta.url));
writeFileSync(README, withSettings(readFileSync(README, 'utf8')));
writeFileSync(fileURLToPath(new URL('../../.env.example', import.meta.url)), envExample());
