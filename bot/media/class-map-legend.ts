import { mapCell, mapSwatch, type Standing } from './class-map-cell.ts';
import { missingMark } from './digest-row.ts';
import { PHONE_WIDTH } from './drawing.ts';
import type { Stretch } from './heading.ts';
import { legend } from './legend.ts';
import type { PictureWords } from './words.ts';

/** The looks of a cell and the mark of a missing one, beside their words; too few is known by the form of its figure. */
export function classMapLegend(words: PictureWords, top: number): Stretch {
  const area = (x: number, y: number) => ({ x: x - 12, y: y - 11, width: 24, height: 22 });
  const swatch = (standing: Standing) => (x: number, y: number) => mapSwatch(standing, area(x, y));
  const few = { right: 3, asked: 4, standing: 'few' } as const;
  const entries = [
    { draw: swatch('secure'), label: words.secure },
    { draw: swatch('growing'), label: words.growing },
    { draw: swatch('not_yet'), label: words.notYet },
    { draw: (x: number, y: number) => mapCell(few, area(x, y)), label: words.tooFew },
    { draw: missingMark, label: words.notAsked },
  ];
  return legend(entries, PHONE_WIDTH, top);
}
