import type { SchoolClass } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';

/** Longer titles are cut: some clients show no more of a name. */
const LONGEST_TITLE = 40;
/** Enough of a class's id to tell a teacher's classes apart. */
const ID_TAIL = 6;
const OTHER_SCRIPTS = /(?![a-z0-9])[\p{L}\p{N}]/iu;

/**
 * A digest file's name: the class's title in small plain ASCII letters, which every client and every disk keeps, and the day.
 * Where the title loses letters on the way (another script, a cut), the end of the class's id stands behind it. Titles
 * that differ in accents, signs or blanks alone share a name.
 *
 * @example
 * digestFileName({ id, title: 'Kingfisher class, Harbour Lane' }, day, 'csv');
 * // 'digest-kingfisher-class-harbour-lane-2026-09-18.csv'
 */
export function digestFileName(
  schoolClass: Pick<SchoolClass, 'id' | 'title'>,
  day: SchoolDay,
  ending: 'png' | 'csv',
): string {
  return classFileName('digest', schoolClass, day, ending);
}

/** The name of any file about a class, made as {@link digestFileName} says; `what` is small plain letters. */
export function classFileName(
  what: string,
  { id, title }: Pick<SchoolClass, 'id' | 'title'>,
  day: SchoolDay,
  ending: string,
): string {
  const bare = title.normalize('NFKD').replace(/\p{M}/gu, '');
  const plain = bare
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  const short = plain.slice(0, LONGEST_TITLE).replace(/-$/, '');
  const isWhole = short === plain && short !== '' && !OTHER_SCRIPTS.test(bare);
  const tail = isWhole ? [] : [id.slice(-ID_TAIL)];
  return `${[what, ...(short === '' ? ['class'] : [short]), ...tail, day].join('-')}.${ending}`;
}
