import { instantAt, storedDay, storedTime } from '../../../db/index.ts';
import { LANGUAGES } from '../../../drills/index.ts';
import { type Check, fine, mend } from './check.ts';

/** As in package.json: what the libraries need. */
const NODE = { major: 20, minor: 19 } as const;

/** Node itself. */
export const nodeCheck: Check = {
  what: 'node',
  look: async () => {
    const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
    const isNew = major > NODE.major || (major === NODE.major && minor >= NODE.minor);
    const found = `Node ${process.versions.node}`;
    return isNew
      ? fine(found)
      : mend(`${found} is too old: install ${NODE.major}.${NODE.minor} or newer.`);
  },
};

/** When 17:30 in London was on a summer's and on a winter's day: half an answer comes from a Node without time zones. */
const LONDON = [
  { day: '2026-07-01', instant: '2026-07-01T16:30:00.000Z' },
  { day: '2026-12-01', instant: '2026-12-01T17:30:00.000Z' },
] as const;

/** The time zone data and the languages of dates that came with Node. */
export const zoneCheck: Check = {
  what: 'time zones',
  look: async () => {
    const wrong = LONDON.filter(
      ({ day, instant }) =>
        instantAt(storedDay(day), storedTime('17:30'), 'Europe/London').toISOString() !== instant,
    );
    const tags = Object.keys(LANGUAGES);
    const missing = tags.filter((tag) => Intl.DateTimeFormat.supportedLocalesOf(tag).length === 0);
    if (wrong.length > 0 || missing.length > 0) {
      return mend(
        'This Node comes without full time zone and language data (ICU). Install one from nodejs.org.',
      );
    }
    return fine(`data of ${process.versions.tz ?? 'an unnamed release'}`);
  },
};
