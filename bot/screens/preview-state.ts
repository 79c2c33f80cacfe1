/**
 * How far a preview is. It travels in the preview's own buttons, because nothing of it is stored: what each finished part was
 * marked with, what is tapped in the part being marked, and the pages.
 */
export interface PreviewState {
  readonly at: 'offer' | 'later' | 'not_today' | 'started' | 'stopped';
  /** Of each finished part: which cards were missed, as bits, the first card the lowest; of a run, how many numbers were said. */
  readonly done: readonly number[];
  /** The cards tapped as missed in the next part, as bits; null while it is not being marked. */
  readonly marking: number | null;
  readonly pages: number | null;
}

/** A preview at its beginning. */
export const OFFERED: PreviewState = { at: 'offer', done: [], marking: null, pages: null };

/** What the plan's own button carries: a preview in a message of its own. */
export const NEW_PREVIEW = 'new';

const LETTERS = { offer: 'o', later: 'l', not_today: 'n', started: 's', stopped: 'e' } as const;
const RADIX = 36;

/**
 * A state as a button carries it: 32 letters at most for six parts of twenty cards.
 *
 * @example
 * packPreview({ at: 'started', done: [0, 5], marking: 2, pages: null }); // 's0.5-2'
 */
export function packPreview({ at, done, marking, pages }: PreviewState): string {
  const marked = marking === null ? '' : `-${marking.toString(RADIX)}`;
  const read = pages === null ? '' : `_${pages}`;
  return `${LETTERS[at]}${done.map((value) => value.toString(RADIX)).join('.')}${marked}${read}`;
}

/** The state that a button carries; the beginning when it is none. */
export function unpackPreview(text: string): PreviewState {
  const match = /^([olnse])([0-9a-z.]*)(?:-([0-9a-z]+))?(?:_(\d+))?$/.exec(text);
  const at = Object.entries(LETTERS).find(([, letter]) => letter === match?.[1])?.[0];
  if (!match || !isStep(at)) return OFFERED;
  const [, , done = '', marking, pages] = match;
  return {
    at,
    done: done === '' ? [] : done.split('.').map((value) => bitsOf(value)),
    marking: marking === undefined ? null : bitsOf(marking),
    pages: pages === undefined ? null : Number(pages),
  };
}

function isStep(text: string | undefined): text is PreviewState['at'] {
  return text !== undefined && text in LETTERS;
}

function bitsOf(text: string): number {
  const value = Number.parseInt(text, RADIX);
  return Number.isSafeInteger(value) ? value : 0;
}

/** The places of the bits that are set, the lowest first, below `size`. */
export function placesOf(bits: number, size: number): number[] {
  return Array.from({ length: size }, (_, place) => place).filter(
    (place) => Math.floor(bits / 2 ** place) % 2 === 1,
  );
}
