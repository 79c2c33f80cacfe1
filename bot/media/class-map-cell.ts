import { type Colour, PALETTE } from './palette.ts';
import { requireScore, type StrandScore } from './strand-score.ts';
import { box, HALF_CAP, rule, text } from './svg.ts';

/** How sure the class plan can be of one child in one strand; `few` is too few answers to tell. */
export type Standing = 'secure' | 'growing' | 'not_yet' | 'few';

/** One child in one strand: the score and what it stands for. The caller decides the standing; the picture only shows it. */
export interface MapCell extends StrandScore {
  readonly standing: Standing;
}

/** A rectangle of the picture, in CSS px. */
export interface CellArea {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Look {
  readonly fill: Colour;
  readonly ink: Colour;
  readonly border: Colour | null;
  readonly weight: 400 | 700;
}

// Dark and filled, tinted, framed, bare: four looks that stay apart in greyscale.
const LOOKS: Readonly<Record<Standing, Look>> = {
  secure: { fill: PALETTE.accent, ink: PALETTE.card, border: null, weight: 700 },
  growing: { fill: PALETTE.tint, ink: PALETTE.ink, border: null, weight: 400 },
  not_yet: { fill: PALETTE.card, ink: PALETTE.ink, border: PALETTE.ink, weight: 400 },
  few: { fill: PALETTE.paper, ink: PALETTE.softInk, border: null, weight: 400 },
};

const SIZE = 13;
const SMALL = 12;

/**
 * One cell of a class map: the share right in hundredths, or right of asked when there are too few to speak of a share; a short rule
 * when the strand was not asked.
 *
 * @throws {RangeError} for a score that cannot be.
 * @example
 * mapCell({ right: 9, asked: 10, standing: 'growing' }, { x: 0, y: 0, width: 26, height: 26 }); // contains '>90<'
 */
export function mapCell(cell: MapCell | null, area: CellArea): string {
  const middle = { x: area.x + area.width / 2, y: area.y + area.height / 2 };
  if (cell === null || cell.asked === 0) {
    return rule([middle.x - 5, middle.y], [middle.x + 5, middle.y], PALETTE.softInk, 1.5);
  }
  requireScore(cell);
  const written =
    cell.standing === 'few'
      ? `${cell.right}/${cell.asked}`
      : String(Math.round((100 * cell.right) / cell.asked));
  const { ink, weight } = LOOKS[cell.standing];
  const size = written.length > 2 ? SMALL : SIZE;
  const style = { x: middle.x, y: middle.y + size * HALF_CAP, size } as const;
  return (
    mapSwatch(cell.standing, area) +
    text({ ...style, weight, fill: ink, anchor: 'middle' }, written)
  );
}

/** The ground of a cell without its figure, for the legend as well. */
export function mapSwatch(standing: Standing, area: CellArea): string {
  const { fill, border } = LOOKS[standing];
  const inner = {
    x: area.x + 1,
    y: area.y + 1,
    width: area.width - 2,
    height: area.height - 2,
    r: 4,
  };
  return box(inner, border === null ? { fill } : { fill, border, borderWidth: 1.5 });
}
