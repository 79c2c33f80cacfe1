import { type FaceLimits, type FittedFace, fitFace, isSum } from './fit-face.ts';

/** How much larger a word may be set than the smallest on its sheet. */
const SPREAD = 1.4;

/**
 * The written cards of one sheet: all sums at one size, so that they look alike; number words and phrases each as large as they
 * fit, but none much larger than the smallest.
 *
 * @example
 * fitFaces(['3 + 4', '17 + ? = 20'], { maxWidth: 130, maxHeight: 60, size: 32, phraseFrom: 20, wordFrom: 17, minSize: 14 }).length; // => 2
 */
export function fitFaces(texts: readonly string[], limits: FaceLimits): FittedFace[] {
  const fitted = texts.map((text) => fitFace(text, limits));
  const sizes = (sums: boolean) =>
    fitted.flatMap(({ size }, i) => (isSum(texts[i] ?? '') === sums ? [size] : []));
  const sum = Math.min(...sizes(true));
  const largest = SPREAD * Math.min(...sizes(false));
  return fitted.map((each, i) => {
    const most = isSum(texts[i] ?? '') ? sum : Math.floor(2 * largest) / 2;
    // A size kept small so that it fits still fits when it is smaller; its lines stay as they were broken.
    return { ...each, size: Math.min(each.size, most) };
  });
}
