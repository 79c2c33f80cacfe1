import { entry } from '../entry.ts';

// biome-ignore format: a table of twenty
const UNITS = [
  'zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine',
  'ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen',
];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/**
 * English, 0 to 1000, the usual spelling first. Usual is the one with "and", as schools in England and South Africa say
 * it; the American way without it counts as equal, and so do "a hundred" and "nought".
 *
 * @example
 * englishNumber(101); // ['one hundred and one', 'one hundred one', 'a hundred and one', 'a hundred one']
 */
export function englishNumber(n: number): readonly string[] {
  if (n === 0) return ['zero', 'nought'];
  if (n === 1000) return ['one thousand', 'a thousand'];
  if (n < 100) return [belowHundred(n)];
  const hundreds = Math.floor(n / 100);
  const heads = [`${entry(UNITS, hundreds)} hundred`, ...(hundreds === 1 ? ['a hundred'] : [])];
  if (n % 100 === 0) return heads;
  const rest = belowHundred(n % 100);
  return heads.flatMap((head) => [`${head} and ${rest}`, `${head} ${rest}`]);
}

function belowHundred(n: number): string {
  if (n < 20) return entry(UNITS, n);
  const tens = entry(TENS, Math.floor(n / 10));
  return n % 10 === 0 ? tens : `${tens}-${entry(UNITS, n % 10)}`;
}
