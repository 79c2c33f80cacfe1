import {
  ENOUGH_ASKED,
  type StrandChange,
  type StrandSummary,
  strandTitle,
} from '../../drills/index.ts';
import { bold, lines, type Text } from './words.ts';

/** What the word secure stands for; said wherever it is used. */
export const SECURE_MEANS = `Secure: we expect 9 in 10 right, going by ${ENOUGH_ASKED} answers or more.`;

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
    case 'new':
      return 'new this week';
    case 'new_step':
      return 'new step';
    case 'same':
      return 'about as last week';
    case 'up':
    case 'down': {
      const { right, asked } = change.before;
      return `${change.kind} from ${Math.round((100 * right) / asked)} %`;
    }
  }
}

/** Every strand's tally in one line, with what is new or has moved; null when nobody practised. */
export function strandsLine(strands: readonly StrandSummary[]): string | null {
  if (strands.length === 0) return null;
  if (strands.length > 1 && strands.every(({ change }) => change.kind === 'new')) {
    return `Right of asked: ${strands.map(tallyWords).join('; ')}. All new this week.`;
  }
  const told = strands.map((each) =>
    each.change.kind === 'same'
      ? tallyWords(each)
      : `${tallyWords(each)} (${changeWords(each.change)})`,
  );
  const same = strands.filter(({ change }) => change.kind === 'same').length;
  const rest = same === strands.length ? ' All' : ' The others';
  const as = same > 0 ? `${rest} about as last week.` : '';
  return `Right of asked: ${told.join('; ')}.${as}`;
}

/** The strands one by one: tally, change, how many children are secure, and how many moved against their own past. */
export function strandList(strands: readonly StrandSummary[]): Text {
  return lines(
    bold('By strand, right of asked'),
    ...strands.map(strandRow),
    strands.length === 0 ? 'Nobody has practised in these days. Nothing can be said.' : null,
    ...(strands.length > 0 && strands.length <= STRANDS_WITH_LEGEND
      ? [legendOf(strands), SECURE_MEANS]
      : []),
  );
}

function legendOf(strands: readonly StrandSummary[]): string {
  const moved = strands.some(({ rose, slipped }) => rose + slipped > 0);
  const own = moved ? ' Rose and slipped: beside a child’s own four weeks.' : '';
  return `Last week: the same children on the same steps.${own}`;
}

function strandRow(strand: StrandSummary): string {
  const { children, secure, notYet, rose, slipped, change } = strand;
  return [
    `${tallyWords(strand)}, ${changeWords(change)}`,
    ...(children > 0 ? [`${secure} of ${children} secure`] : []),
    ...(notYet > 0 ? [`${notYet} not yet`] : []),
    ...(rose > 0 ? [`${rose} rose`] : []),
    ...(slipped > 0 ? [`${slipped} slipped`] : []),
  ].join('; ');
}

function tallyWords({ strand, right, asked }: StrandSummary): string {
  return `${strandTitle(strand)} ${right} of ${asked}`;
}
