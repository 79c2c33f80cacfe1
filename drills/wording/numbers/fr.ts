import { entry } from '../entry.ts';

// biome-ignore format: a table of twenty
const UNITS = [
  'zéro', 'un', 'deux', 'trois', 'quatre', 'cinq', 'six', 'sept', 'huit', 'neuf',
  'dix', 'onze', 'douze', 'treize', 'quatorze', 'quinze', 'seize', 'dix-sept', 'dix-huit', 'dix-neuf',
];
const TENS = ['', '', 'vingt', 'trente', 'quarante', 'cinquante', 'soixante'];

/**
 * French, 0 to 1000, the usual spelling first. Usual is the spelling of 1990 with hyphens throughout (cent-vingt-et-un),
 * which French school programmes refer to (from memory); the older ones (cent vingt et un, cent vingt-et-un) count as
 * equal. So do septante, huitante, octante and nonante of Belgian and Swiss schools.
 *
 * @example
 * frenchNumber(71); // ['soixante-et-onze', 'soixante et onze', 'septante-et-un', 'septante et un']
 */
export function frenchNumber(n: number): readonly string[] {
  if (n === 1000) return ['mille'];
  const hundreds = Math.floor(n / 100);
  if (hundreds === 0) return unique(belowHundred(n).flatMap((word) => [word, older(word)]));
  const plural = n % 100 === 0 ? 's' : '';
  const head = hundreds === 1 ? 'cent' : `${entry(UNITS, hundreds)} cent${plural}`;
  if (n % 100 === 0) return unique([head.replace(' ', '-'), head]);
  return unique(
    belowHundred(n % 100).flatMap((rest) => [
      `${head.replace(' ', '-')}-${rest}`,
      `${head} ${rest}`,
      `${head} ${older(rest)}`,
    ]),
  );
}

/** With all its hyphens: the word of France first, then those of Belgium and Switzerland. */
function belowHundred(n: number): readonly string[] {
  if (n < 20) return [entry(UNITS, n)];
  if (n < 70) return [after(entry(TENS, Math.floor(n / 10)), n % 10)];
  if (n < 80) return [after('soixante', n - 60), after('septante', n - 70)];
  const twenties = n === 80 ? 'quatre-vingts' : `quatre-vingt-${entry(UNITS, n - 80)}`;
  if (n < 90) return [twenties, after('huitante', n - 80), after('octante', n - 80)];
  return [twenties, after('nonante', n - 90)];
}

/** Tens with what follows: one and eleven are joined by "et". */
function after(tens: string, rest: number): string {
  if (rest === 0) return tens;
  return `${tens}${rest % 10 === 1 ? '-et-' : '-'}${entry(UNITS, rest)}`;
}

function older(word: string): string {
  return word.replace('-et-', ' et ');
}

function unique(words: readonly string[]): readonly string[] {
  return [...new Set(words)];
}
