import { ENOUGH_ASKED, type StrandChange, type StrandSummary } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { clauses } from './clauses.ts';
import { strandName } from './part-title.ts';
import { bold, lines, type Text } from './words.ts';

/** What the word secure stands for; said wherever it is used. */
export function secureMeans(): string {
  return say('digest-strands-secure-means', { answers: ENOUGH_ASKED });
}

/** With the legend the screen has nine lines; more strands than this leave it out. */
const STRANDS_WITH_LEGEND = 6;

/**
 * How a strand went beside the week before, of the same children on the same steps. A week without marks is not nought: the
 * strand is new.
 *
 * @example
 * changeWords({ kind: 'up', now: { right: 9, asked: 10 }, before: { right: 7, asked: 10 } }); // 'up from 70 %'
 */
export function changeWords(change: StrandChange): string {
  switch (change.kind) {
    case 'up':
    case 'down': {
      const { right, asked } = change.before;
      return say(`digest-strands-${change.kind}`, { percent: Math.round((100 * right) / asked) });
    }
    default:
      return say(`digest-strands-${change.kind}`);
  }
}

/** Every strand's tally in one line, with what is new or has moved; null when nobody practised. */
export function strandsLine(strands: readonly StrandSummary[]): string | null {
  if (strands.length === 0) return null;
  if (strands.length > 1 && strands.every(({ change }) => change.kind === 'new')) {
    return say('digest-strands-line-all-new', { tallies: clauses(strands.map(tallyWords)) });
  }
  const told = strands.map((each) =>
    each.change.kind === 'same'
      ? tallyWords(each)
      : say('digest-strands-changed', {
          tally: tallyWords(each),
          change: changeWords(each.change),
        }),
  );
  const same = strands.filter(({ change }) => change.kind === 'same').length;
  const tallies = clauses(told);
  if (same === 0) return say('digest-strands-line', { tallies });
  const who = same === strands.length ? 'all' : 'others';
  return say(`digest-strands-line-${who}-same`, { tallies });
}

/** The strands one by one: tally, change, how many children are secure, and how many moved against their own past. */
export function strandList(strands: readonly StrandSummary[]): Text {
  return lines(
    bold(say('digest-strands-title')),
    ...strands.map(strandRow),
    strands.length === 0 ? say('digest-strands-nothing') : null,
    ...(strands.length > 0 && strands.length <= STRANDS_WITH_LEGEND
      ? [legendOf(strands), secureMeans()]
      : []),
  );
}

function legendOf(strands: readonly StrandSummary[]): string {
  const moved = strands.some(({ rose, slipped }) => rose + slipped > 0);
  return moved ? say('digest-strands-legend-own') : say('digest-strands-legend');
}

function strandRow(strand: StrandSummary): string {
  const { children, secure, notYet, rose, slipped, change } = strand;
  return clauses([
    say('digest-strands-row', { tally: tallyWords(strand), change: changeWords(change) }),
    ...(children > 0 ? [say('digest-strands-secure', { secure, children })] : []),
    ...(notYet > 0 ? [say('digest-strands-not-yet', { count: notYet })] : []),
    ...(rose > 0 ? [say('digest-strands-rose', { count: rose })] : []),
    ...(slipped > 0 ? [say('digest-strands-slipped', { count: slipped })] : []),
  ]);
}

function tallyWords({ strand, right, asked }: StrandSummary): string {
  return say('digest-strands-tally', { strand: strandName(strand), right, asked });
}
