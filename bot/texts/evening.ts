import type { EveningView, PartResult } from '../../db/index.ts';
import {
  askedOf,
  type Comparison,
  compareWithBest,
  type DrillPart,
  estimateMinutes,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { adjustedLine } from './adjusted.ts';
import { pagesOf } from './books.ts';
import { BUTTONS } from './buttons.ts';
import { pagesLines } from './pages-done.ts';
import { partInList, partTitle } from './part-title.ts';
import { shorten } from './quote.ts';
import { bold, dayName, lines, listOf, name, type Text } from './words.ts';

/** Code points from which on a nickname is cut, and the characters it is cut to. */
const LONG_NICKNAME = 64;
const SHORT_NICKNAME = 8;

/** `Wren · Tuesday`, the first line of every evening screen. */
export function heading(view: EveningView): Text {
  const { nickname, day } = view;
  // Characters of many code points, as whole families of emoji, would not leave room for the rest of a caption.
  const child =
    [...nickname].length > LONG_NICKNAME ? shorten(nickname, SHORT_NICKNAME) : name(nickname);
  return bold(say('evening-heading', { child, day: dayName(day) }));
}

/** The evening's message as it arrives. */
export function offer(view: EveningView): Text {
  const titles = [...new Set(view.drill.parts.map(partInList))];
  const count = estimateMinutes({
    parts: view.drill.parts.map((part) => ({ ...part, cards: askedOf(part) })),
  });
  return lines(
    heading(view),
    say('evening-offer', { minutes: say('words-minutes', { count }), parts: listOf(titles) }),
    view.book ? say('evening-then-pages', { pages: pagesOf(view.book.title, view.book) }) : null,
    adjustedLine(view.drill.adjusted, name(view.nickname)),
  );
}

/** The one nudge. */
export function nudge(view: EveningView): Text {
  return lines(offer(view), say('evening-nudge'));
}

/** The reminder a family asked for. */
export function reminder(view: EveningView): Text {
  return lines(offer(view), say('evening-reminder'));
}

/** After "Later". */
export function laterAt(view: EveningView, time: string): Text {
  return lines(offer(view), say('evening-later-at', { time }));
}

/** After "Not today". */
export function notToday(view: EveningView): Text {
  return lines(heading(view), say('evening-not-today'));
}

/** What to do with a part's picture. */
export function partTask(view: EveningView, index: number): Text {
  const part = view.drill.parts[index];
  const last = index > 0 ? partResultLine(view, index - 1) : null;
  return lines(
    heading(view),
    last,
    bold(
      say('evening-part', {
        part: index + 1,
        of: view.drill.parts.length,
        title: part ? partTitle(part) : '',
      }),
    ),
    part ? task(part, view.drill.adjusted?.untimed === true) : null,
  );
}

function task(part: DrillPart, untimed: boolean): string {
  if (part.kind === 'run') {
    return say('evening-count', { start: part.start, length: part.length });
  }
  const { strand, seconds } = part;
  if (strand === 'words') {
    return untimed ? say('evening-read-untimed') : say('evening-read', { seconds });
  }
  return untimed ? say('evening-say-untimed') : say('evening-say', { seconds });
}

/** While a part is being marked. */
export function marking(view: EveningView, index: number): Text {
  const part = view.drill.parts[index];
  const asked = part ? askedOf(part) : 0;
  const right = asked - (view.marking?.missed.length ?? 0);
  return lines(
    heading(view),
    bold(part ? partTitle(part) : ''),
    part?.kind === 'run'
      ? say('evening-tap-last')
      : say('evening-tap-missed', { done: BUTTONS.done, right, asked }),
  );
}

/** After the parts: how many pages? */
export function askPages(view: EveningView): Text {
  return lines(
    heading(view),
    partResultLine(view, view.drill.parts.length - 1),
    view.book ? say('evening-ask-pages', { pages: pagesOf(view.book.title, view.book) }) : null,
  );
}

/** The end of an evening: each part against the child's own best, and what to say again. */
export function result(view: EveningView): Text {
  return lines(
    heading(view),
    ...view.drill.parts.map((_, index) => partResultLine(view, index)),
    ...pagesLines(view),
    say('evening-thanks'),
  );
}

/** What another helper's copy says. */
export function elsewhere(view: EveningView, finished: boolean): Text {
  return lines(
    heading(view),
    say(finished ? 'evening-elsewhere-done' : 'evening-elsewhere-now'),
    ...view.drill.parts.map((_, index) => partResultLine(view, index)),
    ...(finished ? pagesLines(view) : []),
  );
}

/** A day that is over. */
export function closed(view: EveningView): Text {
  return lines(
    heading(view),
    ...view.drill.parts.map((_, index) => partResultLine(view, index)),
    say('evening-closed'),
  );
}

/** One part's line in a result, or null while it is not marked. */
export function partResultLine(view: EveningView, index: number): string | null {
  const part = view.drill.parts[index];
  const scored = view.results[index];
  if (!part || !scored) return null;
  const { right, asked } = scored;
  return say('evening-part-result', {
    part: partTitle(part),
    right,
    asked,
    compared: comparison(scored),
  });
}

/** The sentence under every result's picture. */
export function ownEveningsOnly(): string {
  return say('evening-own-only');
}

/** A score against the child's own best, the only comparison there is. */
export function comparison(scored: PartResult): string {
  return inWords(compareWithBest(scored.right, scored.asked, scored.earlier));
}

function inWords(compared: Comparison): string {
  switch (compared.kind) {
    case 'first':
      return say('evening-first-time');
    case 'better':
      return say('evening-better', { by: compared.by });
    case 'same':
      return say('evening-same');
    case 'below':
      return say('evening-below', { best: compared.best });
  }
}

/** Before a mark is changed. */
export function askWhatToFix(view: EveningView): Text {
  return lines(heading(view), say('evening-what-to-change'));
}

/** What the other messages in the same chat say once one of them, the older or the newer, is in use. */
export function continuedElsewhere(view: EveningView): Text {
  return lines(heading(view), say('evening-other-message'));
}
