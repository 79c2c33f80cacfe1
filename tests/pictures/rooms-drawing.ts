import type { Import } from './imports.ts';
import { escaped, INK, svgPage } from './line-drawing.ts';

/** What each room of the table is for. A new room has to say it here. */
const PURPOSE: Readonly<Record<string, string>> = {
  roots: 'puts everything together; the command line',
  bot: 'create-bot.ts, deps.ts: what features are given',
  'bot/receive': 'updates in: polling, webhook, inbox',
  'bot/send': 'what the clock owes, drawn and sent',
  'bot/features': 'what a tap, a command or a file does',
  'bot/digest': 'the digest’s pictures, pages and tables',
  'bot/screens': 'a text with its buttons',
  'bot/chat': 'showing a screen, uploading, downloading',
  'bot/callback': 'buttons to actions and back',
  'bot/texts': 'every word a person reads',
  'bot/language': 'the reader’s language; Fluent',
  'bot/input': 'what people type, read',
  'bot/holidays': 'public holidays of a place',
  'bot/media': 'pictures: SVG to PNG',
  'bot/clip': 'silent videos: H.264 in MP4',
  'bot/paper': 'what is printed: PDF',
  'bot/watch': 'health and metrics',
  jobs: 'the clock and the delivery engine',
  db: 'the store',
  drills: 'pure computation',
  rehearsal: 'stand-in of the chat service',
};
const CELL = 24;
const LEFT = 430;
const TOP = 130;

/**
 * Which room imports which, as a table in SVG: a dot in the importer's row under the imported room. Rooms stand so that imports
 * point to the right where they can; a ring is one that points back.
 *
 * @throws {Error} for a room without a purpose.
 */
export function roomsDrawing(imports: readonly Import[]): string {
  const order = inOrder(imports);
  const height = TOP + CELL * order.length + 16;
  const width = LEFT + CELL * order.length + 16;
  const rows = order.map((room, at) => rowOf(room, at, order.length));
  const heads = order.map((room, at) => {
    const x = LEFT + CELL * at + CELL / 2 + 4;
    return `<text x="${x}" y="${TOP - 8}" font-size="12" text-anchor="start" transform="rotate(-60 ${x} ${TOP - 8})">${escaped(shortName(room))}</text>`;
  });
  const dots = imports.map(({ from, to }) => {
    const [row, column] = [order.indexOf(from), order.indexOf(to)];
    const place = `cx="${LEFT + CELL * column + CELL / 2}" cy="${TOP + CELL * row + CELL / 2}"`;
    return column > row
      ? `<circle ${place} r="6"/>`
      : `<circle ${place} r="5" fill="#ffffff" stroke="${INK}" stroke-width="2.5"/>`;
  });
  const said = order.map((room) => {
    const what = imports.filter(({ from }) => from === room).map(({ to }) => shortName(to));
    return `${shortName(room)} imports ${what.join(', ') || 'none of the others'}`;
  });
  return svgPage({
    ...{ width, height, title: 'The rooms of the bot and what each imports' },
    description: `${said.join('; ')}.`,
    parts: [...rows, ...heads, ...dots],
  });
}

/** Importers before what they import, as far as that can be; of several the one that imports most and is imported least. */
function inOrder(imports: readonly Import[]): string[] {
  const rest = new Set(imports.flatMap(({ from, to }) => [from, to]));
  const order: string[] = [];
  while (rest.size > 0) {
    const among = imports.filter(({ from, to }) => rest.has(from) && rest.has(to));
    const into = (room: string) => among.filter(({ to }) => to === room).length;
    const outOf = (room: string) => among.filter(({ from }) => from === room).length;
    const rank = (room: string) => (into(room) === 0 ? 1000 : outOf(room) - into(room));
    const [next = ''] = [...rest].sort((a, b) => rank(b) - rank(a) || (a < b ? -1 : 1));
    rest.delete(next);
    order.push(next);
  }
  return order;
}

function rowOf(room: string, at: number, rooms: number): string {
  const purpose = PURPOSE[room];
  if (purpose === undefined)
    throw new Error(`${room} is new: say what it is for in rooms-drawing.ts.`);
  const y = TOP + CELL * at;
  const band =
    at % 2 === 0
      ? `<rect x="8" y="${y}" width="${LEFT + CELL * rooms}" height="${CELL}" fill="#f3ecdf"/>`
      : '';
  const self = `<rect x="${LEFT + CELL * at + 7}" y="${y + 7}" width="10" height="10" fill="#b9ad98"/>`;
  return `${band}${self}<text x="16" y="${y + 16}" font-size="13" font-weight="bold" text-anchor="start">${escaped(shortName(room))}</text><text x="118" y="${y + 16}" font-size="12" text-anchor="start">${escaped(purpose)}</text>`;
}

function shortName(room: string): string {
  if (room === 'roots') return 'roots, cli';
  if (room === 'bot') return 'bot/*.ts';
  return room.replace('bot/', '');
}
