import { answerSheet, cardSheet, type Drawing } from '../../bot/media/index.ts';
import { CLASS_SAMPLES, sampleMap } from '../bot/media/class-samples.ts';
import { clock, KINDS, LONG_WORDS, OVERLAPS, run, written } from '../bot/media/faces.ts';
import { FRAME_SAMPLES } from '../bot/media/frame-samples.ts';
import { SAMPLES, sampleDigest } from '../bot/media/samples.ts';

/** A picture of the gallery: what it shows, and how many pixels wide it is sent. */
export interface Exhibit {
  readonly name: string;
  readonly drawing: Drawing;
  readonly pixels: number;
}

/** A heading and the pictures under it. */
export interface Room {
  readonly title: string;
  readonly exhibits: readonly Exhibit[];
}

const FRAME_PIXELS = 480;
const SHEET_PIXELS = 720;

const hang = (drawings: Readonly<Record<string, Drawing>>, pixels: number): Exhibit[] =>
  Object.entries(drawings).map(([name, drawing]) => ({ name, drawing, pixels }));

const clocks = OVERLAPS.map(([hour, minute]) => clock(hour, minute));
const faces = [...Object.values(KINDS), ...LONG_WORDS.map(written), ...clocks];

/** Sheets of 3 to 20 cards of every kind, and the same with answers. */
function sheets(): Record<string, Drawing> {
  const drawn: Record<string, Drawing> = {};
  for (const count of [3, 4, 5, 7, 10, 12, 15, 20]) {
    const sums = run(1, 1, count).map((n) => written(`${n} + ? = 20`));
    drawn[`${count} gaps`] = cardSheet({ title: 'Number bonds to 20', faces: sums });
    drawn[`${count} clocks`] = cardSheet({
      title: 'The clock',
      faces: run(0, 1, count).map((i) => clocks[i % clocks.length] ?? clock(12, 0)),
    });
    drawn[`${count} cards of all kinds`] = cardSheet({
      title: 'A bit of each',
      faces: run(0, 2, count).map((i) => faces[i % faces.length] ?? written('1 + 1')),
    });
    drawn[`${count} answers`] = answerSheet({
      title: 'Number bonds to 20',
      items: sums.map((face, i) => ({ face, answer: String(19 - i) })),
    });
  }
  return drawn;
}

/** Every template in its states, room by room. */
export function galleryRooms(): Room[] {
  const own = new Set([...Object.keys(FRAME_SAMPLES), ...Object.keys(CLASS_SAMPLES)]);
  const rest = Object.entries(SAMPLES).filter(([name]) => !own.has(name));
  const digests = rest.filter(([name]) => name.includes('digest') || name.includes('class'));
  const others = rest.filter((entry) => !digests.includes(entry));
  return [
    { title: 'Frames and answers', exhibits: hang(FRAME_SAMPLES, FRAME_PIXELS) },
    { title: 'Sheets of 3 to 20 cards', exhibits: hang(sheets(), SHEET_PIXELS) },
    { title: 'Sheets, runs and results', exhibits: hang(Object.fromEntries(others), SHEET_PIXELS) },
    {
      title: 'A child’s term and a class',
      exhibits: [
        ...hang(CLASS_SAMPLES, SHEET_PIXELS),
        ...hang({ 'a class map of sixty': sampleMap(60, 8) }, SHEET_PIXELS),
      ],
    },
    {
      title: 'Digests',
      exhibits: Object.entries({
        ...Object.fromEntries(digests),
        'a class of sixty': sampleDigest(60, 7, 8),
      }).map(([name, drawing]) => ({ name, drawing, pixels: Math.round(2 * drawing.width) })),
    },
  ];
}
