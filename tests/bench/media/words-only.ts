import { createPainter } from '../../../bot/media/index.ts';
import { partPicture } from '../../../bot/screens/pictures.ts';
import { partInWords } from '../../../bot/texts/cards.ts';
import { createRandom, type FactPart, rungById } from '../../../drills/index.ts';
import { USUAL_EVENING } from './drills.ts';
import { say } from './measure.ts';

/** Writes the bytes of a usual evening in words only. */
export function benchWordsOnly(): void {
  const bytes = wordsOnlyBytes();
  const total = bytes.reduce((sum, each) => sum + each, 0);
  say(`A usual evening of five parts, words only: ${bytes.join(' + ')} = ${total} bytes`);
  say();
}

/**
 * Bytes of each part of a usual evening for a family that chose words only: the cards as text, clocks as one small picture.
 * The messages' own wrapping, a few hundred bytes each, is the chat service's and is not counted.
 */
export function wordsOnlyBytes(): number[] {
  const painter = createPainter();
  return USUAL_EVENING.map((rung) => {
    const part = partOf(rung);
    if (part.strand !== 'clock') return Buffer.byteLength(partInWords(part));
    return partPicture(painter, part, 'en').paint().length;
  });
}

function partOf(id: string): FactPart {
  const rung = rungById(id);
  if (rung?.kind !== 'facts') throw new RangeError(`Got rung ${id}: it has no facts.`);
  const { strand, facts, seconds } = rung;
  const cards = createRandom('words only').shuffle(facts).slice(0, 10);
  return { kind: 'facts', strand, rung: rung.id, seconds, cards };
}
