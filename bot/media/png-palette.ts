/** Up to 256 colours chosen for a picture, and for every colour of the picture the index of the nearest chosen one. */
export interface IndexedColours {
  readonly colours: readonly Rgb[];
  /** Keyed by `rgbKey`. */
  readonly nearest: ReadonlyMap<number, number>;
}

/** Red, green and blue, 0 to 255 each. */
export type Rgb = readonly [number, number, number];

/** One number per colour: red in the low byte, then green, then blue. */
export function rgbKey(pixels: Uint8Array, offset: number): number {
  return (
    (pixels[offset] ?? 0) | ((pixels[offset + 1] ?? 0) << 8) | ((pixels[offset + 2] ?? 0) << 16)
  );
}

/**
 * Chooses at most `max` colours for RGBA pixels (alpha is ignored).
 *
 * The commonest colour comes first; each next one is the colour whose pixels are worst served so far
 * (count times squared distance), which keeps flat colours exact and spreads the rest over soft edges.
 * Colours of `kept` that occur are chosen before all others. Ties fall to the lower key, so equal pixels always give
 * equal colours.
 */
export function chooseColours(
  pixels: Uint8Array,
  max: number,
  kept: readonly Rgb[] = [],
): IndexedColours {
  const counted = [...countColours(pixels)]
    .sort(([keyA, a], [keyB, b]) => b - a || keyA - keyB)
    .map(([key, count]) => ({ key, count, rgb: rgbOf(key), distance: Number.POSITIVE_INFINITY }));
  const colours: Rgb[] = [];
  const first = kept.flatMap((rgb) => counted.find((entry) => entry.key === keyOf(rgb)) ?? []);
  let next = first.shift() ?? counted[0];
  while (next !== undefined && colours.length < max) {
    colours.push(next.rgb);
    let worst = 0;
    let worstServed: typeof next | undefined;
    for (const entry of counted) {
      entry.distance = Math.min(entry.distance, squaredDistance(entry.rgb, next.rgb));
      if (entry.distance * entry.count > worst) {
        worst = entry.distance * entry.count;
        worstServed = entry;
      }
    }
    next = first.shift() ?? worstServed;
  }
  return {
    colours,
    nearest: new Map(counted.map(({ key, rgb }) => [key, nearestIndex(colours, rgb)])),
  };
}

function countColours(pixels: Uint8Array): Map<number, number> {
  const counts = new Map<number, number>();
  let key = -1;
  let run = 0;
  // Counting whole runs touches the map once per run instead of once per pixel.
  for (let offset = 0; offset < pixels.length; offset += 4) {
    const here = rgbKey(pixels, offset);
    if (here !== key) {
      if (run > 0) counts.set(key, (counts.get(key) ?? 0) + run);
      key = here;
      run = 0;
    }
    run++;
  }
  if (run > 0) counts.set(key, (counts.get(key) ?? 0) + run);
  return counts;
}

function nearestIndex(colours: readonly Rgb[], rgb: Rgb): number {
  let best = 0;
  let shortest = Number.POSITIVE_INFINITY;
  for (const [index, colour] of colours.entries()) {
    const distance = squaredDistance(colour, rgb);
    if (distance < shortest) {
      shortest = distance;
      best = index;
    }
  }
  return best;
}

function keyOf([red, green, blue]: Rgb): number {
  return red | (green << 8) | (blue << 16);
}

function rgbOf(key: number): Rgb {
  return [key & 255, (key >>> 8) & 255, (key >>> 16) & 255];
}

// The eye sees green differences best and red ones worst but for blue; 2:4:3 is the usual cheap weighting (common practice, no source).
function squaredDistance(a: Rgb, b: Rgb): number {
  return 2 * (a[0] - b[0]) ** 2 + 4 * (a[1] - b[1]) ** 2 + 3 * (a[2] - b[2]) ** 2;
}
