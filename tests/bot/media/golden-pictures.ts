import { fileURLToPath } from 'node:url';
import { createPainter } from '../../../bot/media/index.ts';
import { SAMPLES } from './samples.ts';

/** Where the goldens lie: pictures that were looked at and found right, each named after its sample. */
export const GOLDENS = fileURLToPath(new URL('goldens/', import.meta.url));

/** Half a phone's width: small files, and a moved hand or line still shows. */
const PIXELS = 240;

/** The samples kept as goldens, one or two of each template. */
export const KEPT = [
  'mixed cards',
  'gaps',
  'fives from 35',
  'fives, for the helper',
  'ones back to nought',
  'a result',
  'frame: sum',
  'frame: gap at the start',
  'frame: gap in the middle',
  'frame: half',
  'frame: siebenhundertsiebenundsiebzig',
  'frame: clock 12:00',
  'frame: clock 3:15',
  'frame: clock 5:30',
  'the ready frame',
  'the end frame',
  'how to read 12:55',
  'how to read four clocks',
  'answers to gaps',
  'a mixed answer sheet',
  'the smallest digest',
  'the smallest class map',
  'a class map nobody practised for',
  'a term',
  'a trend',
] as const;

/** The file of a golden. */
export function goldenFile(name: string): string {
  return `${GOLDENS}${name.replace(/[^a-z0-9]+/g, '-')}.png`;
}

/** A sample as it is painted today. */
export function paintedNow(name: string): Uint8Array {
  const drawing = SAMPLES[name];
  if (drawing === undefined) throw new Error(`There is no sample "${name}".`);
  return createPainter().paint(drawing, PIXELS);
}
