import type { Import } from './imports.ts';
import { escaped, INK, PAPER, svgPage } from './line-drawing.ts';

/** A folder of the house: where its box stands, in px, and what is written in it. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly title: string;
  readonly says: readonly string[];
}

const HIGH = 76;
const BOXES: Readonly<Record<string, Box>> = {
  roots: {
    ...{ x: 20, y: 20, width: 720, title: 'bot/main.ts, bot/roots/, bot/cli/' },
    says: ['puts everything together; alone reads the environment and the machine’s clock'],
  },
  rehearsal: {
    ...{ x: 20, y: 150, width: 180, title: 'rehearsal/' },
    says: ['stand-in of the chat', 'service; HTTP only'],
  },
  bot: {
    ...{ x: 240, y: 150, width: 260, title: 'bot/' },
    says: ['what a person sees and taps:', 'screens, texts, pictures, paper'],
  },
  jobs: {
    ...{ x: 560, y: 150, width: 180, title: 'jobs/' },
    says: ['the clock: what is due,', 'and the delivery engine'],
  },
  db: {
    ...{ x: 300, y: 280, width: 400, title: 'db/' },
    says: ['the store: one verb a file; alone knows the schema,', 'the driver and the job engine'],
  },
  drills: {
    ...{ x: 20, y: 410, width: 720, title: 'drills/' },
    says: ['pure computation: what to practise, how a child is doing, what to tell the teacher'],
  },
};

/** Where an import runs down, so that no line crosses a box. */
const LANES: Readonly<Record<string, number>> = {
  'roots rehearsal': 110,
  'roots drills': 220,
  'bot drills': 270,
  'roots bot': 370,
  'bot db': 400,
  'db drills': 500,
  'roots db': 530,
  'roots jobs': 650,
  'jobs db': 630,
  'jobs drills': 720,
};

/**
 * The folders and which imports which, as SVG. A line runs from the importer down to what it imports.
 *
 * @throws {Error} for an import that has no place in the picture: a new one deserves a look.
 */
export function houseDrawing(imports: readonly Import[]): string {
  const lines = imports.map(({ from, to }) => {
    const [x, top, end] = [LANES[`${from} ${to}`], BOXES[from], BOXES[to]];
    if (x === undefined || !top || !end) {
      throw new Error(
        `${from} imports ${to}: is that meant? Then give it a lane in house-drawing.ts.`,
      );
    }
    const foot = end.y - 2;
    return `<path d="M${x} ${top.y + HIGH}V${foot - 8}" stroke="${INK}" stroke-width="1.5"/><path d="M${x - 5} ${foot - 10}h10l-5 10z" fill="${INK}"/>`;
  });
  const said = imports.map(({ from, to }) => `${from} imports ${to}`).join('; ');
  return svgPage({
    width: 760,
    height: 506,
    title: 'The folders of Suppersums and what each imports',
    description: `${said}.`,
    parts: [...Object.values(BOXES).map(boxed), ...lines],
  });
}

function boxed({ x, y, width, title, says }: Box): string {
  const middle = x + width / 2;
  const rows = says.map(
    (line, at) =>
      `<text x="${middle}" y="${y + 46 + 18 * at}" font-size="13">${escaped(line)}</text>`,
  );
  return `<rect x="${x}" y="${y}" width="${width}" height="${HIGH}" fill="${PAPER}" stroke="${INK}" stroke-width="1.5"/><text x="${middle}" y="${y + 25}" font-size="16" font-weight="bold">${escaped(title)}</text>${rows.join('')}`;
}
