import { entry } from '../entry.ts';

// biome-ignore format: a table of thirty
const UNITS = [
  'cero', 'uno', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve',
  'diez', 'once', 'doce', 'trece', 'catorce', 'quince', 'dieciséis', 'diecisiete', 'dieciocho', 'diecinueve',
  'veinte', 'veintiuno', 'veintidós', 'veintitrés', 'veinticuatro', 'veinticinco', 'veintiséis', 'veintisiete',
  'veintiocho', 'veintinueve',
];
// biome-ignore format: a table of ten
const TENS = [
  '', 'diez', 'veinte', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa',
];
// biome-ignore format: a table of ten
const HUNDREDS = [
  '', 'ciento', 'doscientos', 'trescientos', 'cuatrocientos', 'quinientos', 'seiscientos', 'setecientos',
  'ochocientos', 'novecientos',
];
/** Units that take an accent when a word ends in them. */
const STRESSED: ReadonlyMap<number, string> = new Map([
  [2, 'dós'],
  [3, 'trés'],
  [6, 'séis'],
]);

/**
 * Spanish, 0 to 1000, the usual spelling first, as in counting (uno, not un or una). The spelling in one word from 31 on
 * (treintaiuno) and the old one in three from 16 to 29 (diez y seis) count as equal; both from memory of the Academy's
 * spelling of 2010.
 *
 * @example
 * spanishNumber(31); // ['treinta y uno', 'treintaiuno']
 */
export function spanishNumber(n: number): readonly string[] {
  if (n === 100) return ['cien'];
  if (n === 1000) return ['mil'];
  if (n < 100) return belowHundred(n);
  const head = entry(HUNDREDS, Math.floor(n / 100));
  return n % 100 === 0 ? [head] : belowHundred(n % 100).map((rest) => `${head} ${rest}`);
}

function belowHundred(n: number): readonly string[] {
  const unit = n % 10;
  const ten = entry(TENS, Math.floor(n / 10));
  if (n <= 15) return [entry(UNITS, n)];
  if (unit === 0) return [ten];
  const apart = `${ten} y ${entry(UNITS, unit)}`;
  if (n < 30) return [entry(UNITS, n), apart];
  return [apart, `${ten}i${STRESSED.get(unit) ?? entry(UNITS, unit)}`];
}
