import { createHash } from 'node:crypto';
import { writeCode } from '../../../bot/input/written-code.ts';
import type { JoinSlip, PaperCard, PaperDay, SlipsInput } from '../../../bot/paper/index.ts';
import { PAPER_WORDS } from '../../../bot/texts/paper.ts';
import type { CardFace, Language } from '../../../drills/index.ts';
import { answerOf, clockPhrase, faceOf, rungById } from '../../../drills/index.ts';

export const MADE_AT = new Date('2026-09-14T09:00:00Z');

const NAMES = ['Wren', 'Otter', 'Robin', 'Finch', 'Juniper', 'Pip', 'Saffron', 'Ziggy'] as const;

/** A nickname of the greatest length, and two that the font can draw in part or not at all. */
export const HARD_NAMES = ['Wwwwwwwwwwwwwwwwwwwwwwww', '👩‍🚀 Ace', 'אור'] as const;

/** The link a slip carries; its code is made of the number, so that every slip has its own. */
export function linkOf(code: string): string {
  return `https://t.me/harbour_lane_bot?start=${code}`;
}

/** The join code of a child in these samples. */
export function codeOf(number: number): string {
  return createHash('sha256')
    .update(`slip ${number}`)
    .digest()
    .subarray(0, 16)
    .toString('base64url');
}

/** So many slips, the hard names first when asked for. */
export function slips(count: number, first: readonly string[] = []): JoinSlip[] {
  return Array.from({ length: count }, (_, i) => {
    const code = codeOf(i + 1);
    const nickname = first[i] ?? NAMES[i % NAMES.length] ?? 'Wren';
    return { number: i + 1, nickname, link: linkOf(code), code: writeCode(code) };
  });
}

/** A document of join slips. */
export function slipsInput(count: number, change: Partial<SlipsInput> = {}): SlipsInput {
  return {
    classTitle: 'Kingfisher class, Harbour Lane School',
    slips: slips(count),
    place: 't.me/harbour_lane_bot',
    until: '12 November 2026',
    paper: 'a4',
    words: PAPER_WORDS.en,
    ...change,
  };
}

/** The first cards of a rung. */
export function cardsOf(rungId: string, count: number, language: Language = 'en'): PaperCard[] {
  const rung = rungById(rungId);
  if (rung?.kind !== 'facts') throw new Error(`no facts on ${rungId}`);
  return rung.facts.slice(0, count).map((fact) => ({
    face: faceOf(fact, language),
    answer: answerOf(fact, language),
    part: rung.title,
  }));
}

/** A counting run as a card. */
export function runCard(length: number, language: Language = 'en'): PaperCard {
  const numbers = Array.from({ length }, (_, i) => 35 + 5 * i);
  return {
    face: { kind: 'text', text: PAPER_WORDS[language].run(35, 5) },
    answer: numbers.join(', '),
    part: 'counting in fives',
  };
}

/** A clock card. */
export function clockCard(hour: number, minute: number): PaperCard {
  const answer = clockPhrase(hour, minute);
  return { face: { kind: 'clock', hour, minute }, answer, part: 'clock, to five minutes' };
}

/** An evening's cards of each kind. */
export function mixedCards(): PaperCard[] {
  return [
    ...cardsOf('bonds.to20', 5),
    ...cardsOf('halves.to20', 4),
    ...[0, 1, 2, 3, 4].map((i) => clockCard(1 + 2 * i, 5 + 10 * i)),
    runCard(10),
  ];
}

/** School days with the parts of a usual plan. */
export function days(count: number): PaperDay[] {
  const facesOf = (cards: readonly PaperCard[]): CardFace[] => cards.map(({ face }) => face);
  const labels = ['Mon 14 Sept', 'Tue 15 Sept', 'Wed 16 Sept', 'Thu 17 Sept', 'Fri 18 Sept'];
  const part = (title: string, cards: readonly PaperCard[]) => ({
    title,
    faces: facesOf(cards),
    asked: cards.length,
  });
  return Array.from({ length: count }, (_, i) => ({
    label: labels[i % labels.length] ?? '',
    tasks: [
      part('adding within 20', cardsOf('bonds.to20', 10)),
      part('doubles to 20', cardsOf('doubles.to10', 8)),
      part('halves to 20', cardsOf('halves.to20', 8)),
      part(
        'clock, to five minutes',
        [0, 1, 2, 3, 4, 5].map((j) => clockCard(1 + 2 * j, 5 + 10 * j)),
      ),
      { title: 'counting in fives', faces: [runCard(10).face], asked: 10 },
    ],
  }));
}
