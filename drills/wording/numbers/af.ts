import { entry } from '../entry.ts';

// biome-ignore format: a table of twenty
const UNITS = [
  'nul', 'een', 'twee', 'drie', 'vier', 'vyf', 'ses', 'sewe', 'agt', 'nege',
  'tien', 'elf', 'twaalf', 'dertien', 'veertien', 'vyftien', 'sestien', 'sewentien', 'agtien', 'negentien',
];
// biome-ignore format: a table of ten
const TENS = [
  '', '', 'twintig', 'dertig', 'veertig', 'vyftig', 'sestig', 'sewentig', 'tagtig', 'negentig',
];

/**
 * Afrikaans, 0 to 1000, the usual spelling first. 18 is "agtien" (the common spelling, from memory); "agttien" counts as
 * equal. So do "een en twintig" without hyphens, "eenhonderd" and "eenduisend", and "honderd en een"; "honderd een" comes
 * first only because the published rules have it so. A teacher's word on these is still wanted.
 *
 * @example
 * afrikaansNumber(21); // ['een-en-twintig', 'een en twintig']
 */
export function afrikaansNumber(n: number): readonly string[] {
  if (n === 1000) return ['duisend', 'eenduisend'];
  if (n < 100) return belowHundred(n);
  const hundreds = Math.floor(n / 100);
  const heads = hundreds === 1 ? ['honderd', 'eenhonderd'] : [`${entry(UNITS, hundreds)}honderd`];
  if (n % 100 === 0) return heads;
  const rests = belowHundred(n % 100);
  return heads.flatMap((head) =>
    rests.flatMap((rest) => [`${head} ${rest}`, `${head} en ${rest}`]),
  );
}

function belowHundred(n: number): readonly string[] {
  if (n === 18) return ['agtien', 'agttien'];
  if (n < 20) return [entry(UNITS, n)];
  const tens = entry(TENS, Math.floor(n / 10));
  if (n % 10 === 0) return [tens];
  const unit = entry(UNITS, n % 10);
  return [`${unit}-en-${tens}`, `${unit} en ${tens}`];
}
