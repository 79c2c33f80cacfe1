import {
  ANSWER_SIZE,
  type AnsweredCard,
  answerRow,
  answerWidth,
  BETWEEN,
  NUMBER_WIDTH,
  type RowColumns,
} from './answer-row.ts';
import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { faceWidth } from './face-line.ts';
import type { FittedFace } from './fit-face.ts';
import { fitFaces } from './fit-faces.ts';
import { sheetHeading } from './heading.ts';

export type { AnsweredCard } from './answer-row.ts';

interface Columns extends RowColumns {
  readonly count: 1 | 2;
}

/** One part's cards with their answers, in the order of the helper's buttons; `miniClocks` draws each clock beside its phrase. */
export interface AnswerSheetInput {
  readonly title: string;
  readonly items: readonly AnsweredCard[];
  readonly miniClocks?: boolean;
}

const GAP = 12;
const TEXT_ROW = 40;
const PHRASE_ROW = 34;
const CLOCK_ROW = 58;
/** The smallest type, in CSS px, at which cards still stand in two columns. */
const TWO_COLUMNS_FROM = 16;
const FACE_LIMITS = { size: ANSWER_SIZE, phraseFrom: 15, wordFrom: 14, minSize: 13 };
const NO_FACE: FittedFace = { lines: [], size: ANSWER_SIZE };

/**
 * The cards of one part with their answers, for the adult who helps and never for the child: numbers down the left, the answer at
 * the right edge. Short cards stand in two columns, read down. A clock is its phrase alone, unless small clocks are asked for:
 * fifteen of them weigh as much as two sheets.
 *
 * @throws {RangeError} when there is no card.
 * @example
 * answerSheet({ title: 'Doubles', items: [{ face: { kind: 'text', text: 'double 7' }, answer: '14' }] }).width; // => 360
 */
export function answerSheet({ title, items, miniClocks = false }: AnswerSheetInput): Drawing {
  if (items.length === 0) throw new RangeError('An answer sheet needs at least one card.');
  const heading = sheetHeading(title);
  const columns = columnsFor(items, miniClocks);
  const rows = Math.ceil(items.length / columns.count);
  const faces = fitFaces(
    items.map(({ face }) => (face.kind === 'text' ? face.text : '')),
    { ...FACE_LIMITS, maxWidth: faceRoom(items, columns), maxHeight: columns.rowHeight - 2 },
  );
  const body = items.map((item, i) => {
    const x = MARGIN + Math.floor(i / rows) * (columns.width + GAP);
    const y = heading.bottom + (i % rows) * columns.rowHeight;
    return answerRow({ item, number: i + 1, x, y, face: faces[i] ?? NO_FACE, columns });
  });
  const height = heading.bottom + rows * columns.rowHeight + MARGIN - 4;
  return drawingOf(PHONE_WIDTH, height, heading.svg + body.join(''));
}

function columnsFor(items: readonly AnsweredCard[], miniClocks: boolean): Columns {
  const whole = PHONE_WIDTH - 2 * MARGIN;
  const half = (whole - GAP) / 2;
  if (items.some(({ face }) => face.kind === 'clock')) {
    return { count: 1, width: whole, rowHeight: miniClocks ? CLOCK_ROW : PHRASE_ROW, miniClocks };
  }
  const fits = items.every(({ face, answer }) => {
    const written = face.kind === 'text' ? faceWidth(face.text, TWO_COLUMNS_FROM) : 0;
    return NUMBER_WIDTH + written + BETWEEN + answerWidth(answer) <= half;
  });
  return fits && items.length > 3
    ? { count: 2, width: half, rowHeight: TEXT_ROW, miniClocks }
    : { count: 1, width: whole, rowHeight: TEXT_ROW + 8, miniClocks };
}

/** What is left for a written card beside the widest answer, which keeps at most half of the row. */
function faceRoom(items: readonly AnsweredCard[], { width }: Columns): number {
  const answers = items.map(({ face, answer }) => (face.kind === 'text' ? answerWidth(answer) : 0));
  const room = width - NUMBER_WIDTH - BETWEEN;
  return room - Math.min(Math.max(0, ...answers), room / 2);
}
