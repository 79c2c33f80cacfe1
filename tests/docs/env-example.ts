import { SETTINGS } from '../../bot/roots/settings.ts';

/** What docker-compose.yml sets by itself; a test compares this with the file. */
export const SET_BY_COMPOSE: readonly string[] = [
  ...['DATABASE_URL', 'DATA_DIR', 'HEALTH_PORT', 'WEBHOOK_PORT', 'LISTEN_ON'],
];

const HEAD = `# Settings of Suppersums. Copy this file to .env and keep the copy to yourself: it holds secrets.
# docker compose reads .env by itself; otherwise: node --env-file=.env bot/suppersums.js start
# A line that begins with # is not read: take the # away from a setting that you want to change.
# npm run settings writes this file from bot/roots/settings.ts.

# Only for docker-compose.yml: the database's password. Letters and figures, long, chosen once. A new one:
#   node -e "console.log(require('node:crypto').randomBytes(24).toString('hex'))"
POSTGRES_PASSWORD=
`;

/** Wide enough for most lines, narrow enough for any editor. */
const WIDTH = 100;

/**
 * The example of a file of settings, each one explained, from the table of settings.
 *
 * @example
 * envExample().includes('\nBOT_TOKEN=\n'); // true
 */
export function envExample(): string {
  const parts = Object.entries(SETTINGS).map(([name, { meaning, standard, example }]) => {
    const says = `${name}: ${meaning}. Left out: ${standard}.`.replaceAll('`', '');
    const own = SET_BY_COMPOSE.includes(name) ? ['# docker-compose.yml sets this itself.'] : [];
    // The one that nearly everybody fills in.
    const line = name === 'BOT_TOKEN' ? `# ${name}=${example}\n${name}=` : `#${name}=${example}`;
    return [...wrapped(says), ...own, line].join('\n');
  });
  return `${HEAD}\n${parts.join('\n\n')}\n`;
}

function wrapped(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= WIDTH) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else {
      lines.push(`# ${word}`);
    }
  }
  return lines;
}
