import type { EveningView, PartResult } from '../../db/index.ts';
import {
  answerOf,
  askedOf,
  type Comparison,
  compareWithBest,
  type DrillPart,
  estimateMinutes,
  questionOf,
  runNumbers,
} from '../../drills/index.ts';
import { adjustedLine } from './adjusted.ts';
import { pagesOf } from './books.ts';
import { pagesLines } from './pages-done.ts';
import { partInList, partTitle } from './part-title.ts';
import { bold, count, dayName, lines, listOf, name, type Text } from './words.ts';

/** `Wren · Tuesday`, the first line of every evening screen. */
export function heading(view: EveningView): Text {
  return bold(`${name(view.nickname)} · ${dayName(view.day)}`);
}

/** The evening's message as it arrives. */
export function offer(view: EveningView): Text {
  const titles = [...new Set(view.drill.parts.map(partInList))];
  const minutes = estimateMinutes({
    parts: view.drill.parts.map((part) => ({ ...part, cards: askedOf(part) })),
  });
  return lines(
    heading(view),
    `About ${count(minutes, 'minute', 'minutes')}: ${listOf(titles)}.`,
    view.book ? `Then ${pagesOf(view.book.title, view.book)}.` : null,
    adjustedLine(view.drill.adjusted, name(view.nickname)),
  );
}

/** The one nudge. */
export function nudge(view: EveningView): Text {
  return lines(offer(view), 'Still time for a few minutes tonight, if it suits.');
}

/** The reminder a family asked for. */
export function reminder(view: EveningView): Text {
  return lines(offer(view), 'You asked for a reminder. Ready when you are.');
}

/** After "Later". */
export function laterAt(view: EveningView, time: string): Text {
  return lines(offer(view), `You asked for one reminder, at ${time}.`);
}

/** After "Not today". */
export function notToday(view: EveningView): Text {
  return lines(heading(view), 'Not today. That is fine.');
}

/** What to do with a part's picture. */
export function partTask(view: EveningView, index: number): Text {
  const part = view.drill.parts[index];
  const last = index > 0 ? partResultLine(view, index - 1) : null;
  return lines(
    heading(view),
    last,
    bold(`Part ${index + 1} of ${view.drill.parts.length}: ${part ? partTitle(part) : ''}`),
    part ? task(part, view.drill.adjusted?.untimed === true) : null,
  );
}

function task(part: DrillPart, untimed: boolean): string {
  if (part.kind === 'run') {
    return `Count aloud together: start at ${part.start}, ${count(part.length, 'number', 'numbers')} in all. Stop at the first slip.`;
  }
  const pace = untimed ? 'as long as it takes.' : `about ${part.seconds} seconds a card. No rush.`;
  return part.strand === 'words'
    ? `Read each word aloud and show or write the number, ${pace}`
    : `Say each answer aloud, ${pace}`;
}

/** The cards as words, for a phone that shows no picture. */
export function partInWords(part: DrillPart): string {
  if (part.kind === 'run') {
    const [first, second] = runNumbers(part);
    return `Start at ${first}: ${first}, ${second}, and so on. ${count(part.length, 'number', 'numbers')} in all.`;
  }
  return part.cards.map((fact, index) => `${index + 1}. ${questionOf(fact)}`).join('\n');
}

/** While a part is being marked. */
export function marking(view: EveningView, index: number): Text {
  const part = view.drill.parts[index];
  const missed = view.marking?.missed.length ?? 0;
  return lines(
    heading(view),
    bold(part ? partTitle(part) : ''),
    part?.kind === 'run'
      ? 'Tap the last number that was right.'
      : `Tap the cards that were missed (✗), then Done. Now: ${(part ? askedOf(part) : 0) - missed} of ${part ? askedOf(part) : 0}.`,
  );
}

/** A card's button while marking: its number, question and answer, and a cross once it is tapped as missed. */
export function cardLabel(part: DrillPart, card: number, missed: boolean): string {
  const fact = part.kind === 'facts' ? part.cards[card] : undefined;
  if (!fact) return '';
  const isClock = fact.startsWith('clock:');
  const text = isClock ? answerOf(fact) : solved(questionOf(fact), answerOf(fact));
  return `${missed ? '✗ ' : ''}${card + 1}. ${text}`;
}

/**
 * A question with its answer.
 *
 * @example
 * solved('7 + ? = 10', '3'); // '7 + 3 = 10'
 * solved('double 7', '14'); // 'double 7 = 14'
 */
export function solved(question: string, answer: string): string {
  return question.includes('?') ? question.replace('?', answer) : `${question} = ${answer}`;
}

/** After the parts: how many pages? */
export function askPages(view: EveningView): Text {
  return lines(
    heading(view),
    partResultLine(view, view.drill.parts.length - 1),
    view.book ? `${pagesOf(view.book.title, view.book)}. How many pages were done?` : null,
  );
}

/** The end of an evening: each part against the child's own best, and what to say again. */
export function result(view: EveningView): Text {
  return lines(
    heading(view),
    ...view.drill.parts.map((_, index) => partResultLine(view, index)),
    ...pagesLines(view),
    'Thank you. That was practice well spent.',
  );
}

/** What another helper's copy says. */
export function elsewhere(view: EveningView, finished: boolean): Text {
  return lines(
    heading(view),
    finished ? 'Practised with another helper.' : 'Another helper is marking this just now.',
    ...view.drill.parts.map((_, index) => partResultLine(view, index)),
    ...(finished ? pagesLines(view) : []),
  );
}

/** A day that is over. */
export function closed(view: EveningView): Text {
  return lines(
    heading(view),
    ...view.drill.parts.map((_, index) => partResultLine(view, index)),
    'This day is over and its drill is closed. Send /today for today’s.',
  );
}

/** One part's line in a result, or null while it is not marked. */
export function partResultLine(view: EveningView, index: number): string | null {
  const part = view.drill.parts[index];
  const scored = view.results[index];
  if (!part || !scored) return null;
  return `${partTitle(part)}: ${scored.right} of ${scored.asked}, ${comparison(scored)}`;
}

/** The sentence under every result's picture. */
export const OWN_EVENINGS_ONLY = 'Compared with this child’s own evenings only.';

/** A score against the child's own best, the only comparison there is. */
export function comparison(scored: PartResult): string {
  return inWords(compareWithBest(scored.right, scored.asked, scored.earlier));
}

function inWords(compared: Comparison): string {
  switch (compared.kind) {
    case 'first':
      return 'first time at this';
    case 'better':
      return `${compared.by} more than the best so far`;
    case 'same':
      return 'same as the best so far';
    case 'below':
      return `best so far ${compared.best}`;
  }
}

/** Before a mark is changed. */
export function askWhatToFix(view: EveningView): Text {
  return lines(
    heading(view),
    'What would you like to change? The earlier marks are kept beside it.',
  );
}

/** What the other messages in the same chat say once one of them, the older or the newer, is in use. */
export function continuedElsewhere(view: EveningView): Text {
  return lines(heading(view), 'Goes on in the other message about this evening.');
}
