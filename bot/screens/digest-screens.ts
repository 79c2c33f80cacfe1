import type { StepUp, Strand, WeekSummary } from '../../drills/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { digest, wobbleList } from '../texts/digest.ts';
import { callList } from '../texts/digest-calls.ts';
import { strandList } from '../texts/digest-strands.ts';
import { slowerLine } from '../texts/fewer.ts';
import { printButton } from '../texts/print.ts';
import {
  acceptAllButton,
  acceptButton,
  type ProposalsInput,
  proposals,
} from '../texts/proposals.ts';
import { lines } from '../texts/words.ts';
import { back } from './class-screens.ts';
import { fewerButton } from './fewer-screen.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { PAPER_CHOICE } from './print-screens.ts';
import { type Button, button, rows, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** Which digest: a class's, of a day, or `now` for the seven days up to today. */
export interface DigestOf {
  readonly classId: string;
  readonly day: string;
}

/** What a digest is also sent as. */
export const DIGEST_FILES = ['picture', 'table', 'map', 'trend'] as const;

/** One of {@link DIGEST_FILES}. */
export type DigestFile = (typeof DIGEST_FILES)[number];

const FILE_LABELS = {
  picture: 'digestPicture',
  table: 'digestTable',
  map: 'digestMap',
  trend: 'digestTrend',
} as const satisfies Readonly<Record<DigestFile, keyof typeof BUTTONS>>;

/** Offers that have a row each, so that no strand’s name is cut off; more stand two in a row. */
const OFFERS_IN_ROWS = 6;
/** Families on one page: with what could be said to each, they fill a phone. */
const FAMILIES_A_PAGE = 5;

/** A digest with the way to everything behind it. */
export function digestScreen(of: DigestOf, title: string, summary: WeekSummary): Screen {
  const files = DIGEST_FILES.map((what) =>
    button(BUTTONS[FILE_LABELS[what]], { kind: 'digestFile', ...of, what }),
  );
  const papers = PAPER_CHOICE.map((paper, index) =>
    button(printButton(paper), { kind: 'digestPaper', ...of, paper: index }),
  );
  return {
    text: digest(title, summary),
    buttons: [
      [
        button(BUTTONS.proposals, { kind: 'proposals', ...of }),
        button(BUTTONS.families, { kind: 'digestFamilies', ...of, page: 0 }),
      ],
      [
        button(BUTTONS.byStrand, { kind: 'digestStrands', ...of }),
        button(BUTTONS.wobbles, { kind: 'digestFacts', ...of }),
      ],
      ...(summary.children.length > 0 && summary.days.length > 0
        ? [...rows(files, 2), papers]
        : []),
      [
        of.day === 'now'
          ? button(BUTTONS.back, { kind: 'classNow', classId: of.classId })
          : back(of.classId),
      ],
    ],
  };
}

/** What the class is least sure of. */
export function wobblesScreen(of: DigestOf, { wobbling }: WeekSummary): Screen {
  return { text: wobbleList(wobbling), buttons: [[toDigest(of)]] };
}

/** The strands one by one. */
export function strandsScreen(of: DigestOf, { strands }: WeekSummary): Screen {
  return { text: strandList(strands), buttons: [[toDigest(of)]] };
}

/** The families worth a call, the most urgent first. */
export function familiesScreen(of: DigestOf, { calls, slower }: WeekSummary, at: number): Screen {
  const page = pageOf(calls, at, FAMILIES_A_PAGE);
  return {
    text: lines(callList(page), slowerLine(slower)),
    buttons: [
      ...pageRow(page, (to) => ({ kind: 'digestFamilies', ...of, page: to })),
      ...(slower.length > 0 ? [[fewerButton(of.classId)]] : []),
      [toDigest(of)],
    ],
  };
}

/** A change that one tap accepts: of one strand, or of all; `sign` stands for exactly this change. */
export interface Offer {
  readonly of: Strand | 'all';
  readonly sign: string;
  readonly steps: readonly StepUp[];
}

/** What the proposals screen shows. `undo` is the act that was just done. */
export interface ProposalsShown extends ProposalsInput {
  readonly offers: readonly Offer[];
  readonly undo: string | null;
}

/** The proposals, each strand's steps by one tap, and all at once. */
export function proposalsScreen(of: DigestOf, shown: ProposalsShown): Screen {
  const accept = (offer: Offer) =>
    button(offer.of === 'all' ? acceptAllButton(offer.steps.length) : acceptButton(offer.of), {
      kind: 'acceptSteps',
      ...of,
      of: offer.of,
      sign: offer.sign,
    });
  const all = shown.offers.filter((offer) => offer.of === 'all');
  const each = shown.offers.filter((offer) => offer.of !== 'all');
  return {
    text: proposals(shown),
    buttons: [
      ...all.map((offer) => [accept(offer)]),
      ...rows(each.map(accept), each.length > OFFERS_IN_ROWS ? 2 : 1),
      ...(shown.undo === null ? [] : [[undoButton(shown.undo)]]),
      [button(BUTTONS.plan, { kind: 'plan', classId: of.classId }), toDigest(of)],
    ],
  };
}

function toDigest(of: DigestOf): Button {
  return button(BUTTONS.back, { kind: 'digestOf', ...of });
}
