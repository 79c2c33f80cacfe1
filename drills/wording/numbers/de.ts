import { entry } from '../entry.ts';

// biome-ignore format: a table of twenty
const UNITS = [
  'null', 'eins', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun',
  'zehn', 'elf', 'zwölf', 'dreizehn', 'vierzehn', 'fünfzehn', 'sechzehn', 'siebzehn', 'achtzehn', 'neunzehn',
];
// biome-ignore format: a table of ten
const TENS = [
  '', '', 'zwanzig', 'dreißig', 'vierzig', 'fünfzig', 'sechzig', 'siebzig', 'achtzig', 'neunzig',
];

/**
 * German, 0 to 1000, the usual spelling first. Usual is "einhundert", which names every place (as the published rule sets
 * do); "hundert", "tausend" and an "und" after the hundreds count as equal.
 *
 * @example
 * germanNumber(101); // ['einhunderteins', 'einhundertundeins', 'hunderteins', 'hundertundeins']
 */
export function germanNumber(n: number): readonly string[] {
  if (n === 1000) return ['eintausend', 'tausend'];
  if (n < 100) return [belowHundred(n)];
  const hundreds = Math.floor(n / 100);
  const heads = [`${joined(hundreds)}hundert`, ...(hundreds === 1 ? ['hundert'] : [])];
  if (n % 100 === 0) return heads;
  const rest = belowHundred(n % 100);
  return heads.flatMap((head) => [`${head}${rest}`, `${head}und${rest}`]);
}

function belowHundred(n: number): string {
  if (n < 20) return entry(UNITS, n);
  const tens = entry(TENS, Math.floor(n / 10));
  return n % 10 === 0 ? tens : `${joined(n % 10)}und${tens}`;
}

/** A unit inside a word: one loses its s. */
function joined(unit: number): string {
  return unit === 1 ? 'ein' : entry(UNITS, unit);
}
