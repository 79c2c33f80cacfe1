import { dayMark } from './day-mark.ts';
import { missingMark } from './digest-row.ts';
import type { Stretch } from './heading.ts';
import { legend } from './legend.ts';
import type { PictureWords } from './words.ts';

/** The marks of the digest: four states of a day and a strand not asked. */
export function digestLegend(words: PictureWords, width: number, top: number): Stretch {
  const day = (state: Parameters<typeof dayMark>[0]) => (x: number, y: number) =>
    dayMark(state, x, y);
  const entries = [
    { draw: day('practised'), label: words.practised },
    { draw: day('not_today'), label: words.notToday },
    { draw: day('silent'), label: words.silent },
    { draw: day('unsent'), label: words.unsent },
    { draw: missingMark, label: words.notAsked },
  ];
  return legend(entries, width, top);
}
