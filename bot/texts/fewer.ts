import type { ChildStand } from '../../db/index.ts';
import type { Named, PaceStand } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import type { Page } from '../screens/pages.ts';
import { clauses } from './clauses.ts';
import { bold, lines, name, shortDate, type Text, weekdayRange } from './words.ts';

/** As many children as a line of the digest takes. */
const MOST_IN_A_LINE = 3;

/** One page of the children whose drill does not simply come every school day, for the class's teachers. */
export function fewerList(title: string, { shown, page, pages }: Page<ChildStand>): Text {
  const of = { title: name(title) };
  const silent = shown.some(({ stand }) => stand.kind === 'announced' || stand.kind === 'fewer');
  return lines(
    bold(
      pages > 1
        ? say('fewer-title-paged', { ...of, page: page + 1, pages })
        : say('fewer-title', of),
    ),
    ...shown.map(line),
    shown.length === 0 ? say('fewer-none') : null,
    silent ? say('fewer-hint') : null,
  );
}

function line({ stand, ...child }: ChildStand): string {
  const who = whoOf(child);
  if (stand.kind !== 'announced') return say('fewer-line', { who, words: paceWords(stand) });
  const key = stand.rate === 'one' ? 'fewer-announced-one' : 'fewer-announced-three';
  return say(key, { who, day: shortDate(stand.from) });
}

/** A child as teachers know it: `4. Robin`. */
export function whoOf({ number, nickname }: Pick<Named, 'number' | 'nickname'>): string {
  return `${number}. ${name(nickname)}`;
}

/** How often the drill comes to a family, in a few words without a stop. */
export function paceWords(stand: PaceStand): string {
  switch (stand.kind) {
    case 'paused':
      return say('fewer-words-paused', { day: shortDate(stand.until) });
    case 'announced':
      return say(
        stand.rate === 'one' ? 'fewer-words-announced-one' : 'fewer-words-announced-three',
        { day: shortDate(stand.from) },
      );
    case 'fewer':
      return say(stand.rate === 'one' ? 'fewer-words-one' : 'fewer-words-three');
    case 'kept':
      return say('fewer-words-kept');
    case 'days':
      return say('fewer-words-days', { days: weekdayRange(stand.days) });
  }
}

/** In one line of a digest, to which families the drill comes less often; null when there are none. */
export function slowerLine(
  slower: readonly (Named & { readonly stand: PaceStand })[],
): string | null {
  if (slower.length === 0) return null;
  const more = slower.length - MOST_IN_A_LINE;
  const shown = slower
    .slice(0, MOST_IN_A_LINE)
    .map(({ stand, ...child }) => `${whoOf(child)} (${paceWords(stand)})`);
  const list = clauses(shown, Math.max(0, more));
  return say('fewer-digest', { list });
}

/** The line that answers "Keep daily", or its being taken back. */
export function keptLine(stand: PaceStand | null): string {
  return stand?.kind === 'announced'
    ? say('fewer-let-go', { day: shortDate(stand.from) })
    : say('fewer-kept');
}
