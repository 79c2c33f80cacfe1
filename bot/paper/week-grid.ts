import { type MapCell, mapCell, mapSwatch, type Standing } from '../media/class-map-cell.ts';
import { type DayState, dayMark } from '../media/day-mark.ts';
import { fitText } from '../media/fit-text.ts';
import { fitTogether } from '../media/fit-together.ts';
import { drawable, measure } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import { HALF_CAP, num, rule, text } from '../media/svg.ts';
import { type PictureWords, pictureWords } from '../media/words.ts';

/** One child of a printed week; `null` for a strand that was not asked, which is missing and never nought. */
export interface WeekRow {
  readonly number: number;
  readonly name: string;
  readonly days: readonly DayState[];
  readonly cells: readonly (MapCell | null)[];
}

/** A class's week as a grid: children down, days and strands across; `note` says what its figures are. */
export interface WeekGrid {
  readonly dayLabels: readonly string[];
  readonly strandLabels: readonly string[];
  readonly rows: readonly WeekRow[];
  readonly note: string;
}

/** Where the grid stands, in points. It takes no more height than it is given, and no more than it needs. */
export interface GridPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const NUMBER = 20;
const NAME = 108;
const DAY = 24;
const HEAD = 26;
const LEGEND = 18;
/** A row is as high as there is room for, and never higher than this. */
const HIGHEST_ROW = 19;
/** The marks of the screen's templates are drawn for rows of this height and then made smaller. */
const DRAWN_ROW = 25;
/** In rows lower than this the marks fill more of theirs, so that figures can still be read. */
const LOW_ROW = { below: 13, drawn: 19 };

/** Draws the grid with its legend below. */
export function weekGrid(grid: WeekGrid, place: GridPlace): string {
  const room = place.height - HEAD - LEGEND;
  const row = Math.min(HIGHEST_ROW, room / Math.max(1, grid.rows.length));
  const columns = columnsOf(grid, place);
  const top = place.y + HEAD;
  const bottom = top + row * grid.rows.length;
  const end = place.x + place.width;
  return [
    heads(grid, columns, place),
    ...grid.rows.map((each, i) => rowAt(each, columns, { ...place, y: top + i * row, row })),
    rule([place.x, top], [end, top], PALETTE.softInk, 0.75),
    rule([place.x, bottom], [end, bottom], PALETTE.softInk, 0.75),
    legendAt(pictureWords(), place, bottom + 11),
  ].join('');
}

interface Columns {
  readonly days: readonly number[];
  readonly strands: readonly number[];
  readonly strandWidth: number;
}

function columnsOf({ dayLabels, strandLabels }: WeekGrid, { x, width }: GridPlace): Columns {
  const firstDay = x + NUMBER + NAME;
  const firstStrand = firstDay + dayLabels.length * DAY + 6;
  const strandWidth = (x + width - firstStrand) / Math.max(1, strandLabels.length);
  return {
    days: dayLabels.map((_, i) => firstDay + (i + 0.5) * DAY),
    strands: strandLabels.map((_, i) => firstStrand + (i + 0.5) * strandWidth),
    strandWidth,
  };
}

function heads(
  { dayLabels, strandLabels, note }: WeekGrid,
  columns: Columns,
  place: GridPlace,
): string {
  const limits = { size: 9, oneLineFrom: 9, minSize: 6, maxWidth: columns.strandWidth - 4 };
  const strands = fitTogether(strandLabels, limits);
  const lowest = place.y + HEAD - 6;
  const style = { weight: 700, anchor: 'middle' } as const;
  const days = columns.days.map((x, i) =>
    text({ ...style, x, y: lowest, size: 8.5 }, dayLabels[i] ?? ''),
  );
  const labels = columns.strands.flatMap((x, i) => {
    const lines = strands.lines[i] ?? [];
    return lines.map((line, at) => {
      const y = lowest - (lines.length - 1 - at) * strands.size * 1.15;
      return text({ ...style, x, y, size: strands.size }, line);
    });
  });
  const small = { x: place.x, y: lowest, size: 7.5, fill: PALETTE.softInk } as const;
  return [text(small, note), ...days, ...labels].join('');
}

function rowAt(
  each: WeekRow,
  columns: Columns,
  { x, y, width, row }: GridPlace & { readonly row: number },
): string {
  const size = Math.min(10, row * 0.7);
  const middle = y + row / 2;
  const base = middle + size * HALF_CAP;
  const name = fitText(drawable(each.name, ''), {
    maxWidth: NAME - 8,
    size,
    minSize: size * 0.8,
    weight: 400,
  });
  const drawn = row < LOW_ROW.below ? LOW_ROW.drawn : DRAWN_ROW;
  const scale = row / drawn;
  const cell = (found: MapCell | null, at: number) => {
    const wide = Math.min(48, columns.strandWidth / scale);
    const left = (columns.strands[at] ?? 0) - (wide * scale) / 2;
    return scaled(mapCell(found, { x: 0, y: 0, width: wide, height: drawn }), {
      x: left,
      y,
      scale,
    });
  };
  return [
    rule([x, y], [x + width, y], PALETTE.line, 0.4),
    text({ x: x + NUMBER - 6, y: base, size, anchor: 'end' }, String(each.number)),
    text({ x: x + NUMBER, y: base, size: name.size }, name.text),
    ...columns.days.map((at, i) =>
      scaled(dayMark(each.days[i] ?? 'none', 0, 0), { x: at, y: middle, scale: scale * 0.95 }),
    ),
    ...each.cells.map(cell),
  ].join('');
}

function scaled(
  svg: string,
  { x, y, scale }: { readonly x: number; readonly y: number; readonly scale: number },
): string {
  return svg === ''
    ? ''
    : `<g transform="translate(${num(x)} ${num(y)}) scale(${scale.toFixed(4)})">${svg}</g>`;
}

/** Every mark of the grid beside its words, on one line; made smaller where the words of a language need more than the width. */
function legendAt(words: PictureWords, { x, width }: GridPlace, y: number): string {
  const day = (state: DayState) => scaled(dayMark(state, 9, 0), { x: 0, y: 0, scale: 0.5 });
  const swatch = (standing: Standing) =>
    scaled(mapSwatch(standing, { x: 0, y: -9, width: 22, height: 18 }), { x: 0, y: 0, scale: 0.5 });
  const entries: readonly (readonly [string, string])[] = [
    [day('practised'), words.practised],
    [day('not_today'), words.notToday],
    [day('silent'), words.silent],
    [day('unsent'), words.unsent],
    [swatch('secure'), words.secure],
    [swatch('growing'), words.growing],
    [swatch('not_yet'), words.notYet],
    [text({ x: 0, y: 2.6, size: 7.5, fill: PALETTE.softInk }, '3/4'), words.tooFew],
    [rule([0, 0], [8, 0], PALETTE.softInk, 0.9), words.notAsked],
  ];
  const gap = 10;
  const wide = ([, label]: readonly [string, string]) => 14 + measure(label, 7.5, 400) + gap;
  const whole = entries.map(wide).reduce((sum, each) => sum + each) - gap;
  const scale = Math.min(1, width / whole);
  let at = x;
  let svg = '';
  for (const entry of entries) {
    const [mark, label] = entry;
    const style = { x: 14, y: 7.5 * HALF_CAP, size: 7.5, fill: PALETTE.softInk } as const;
    svg += scaled(mark + text(style, label), { x: at, y, scale });
    at += wide(entry) * scale;
  }
  return svg;
}
