import { describe, expect, it } from 'vitest';
import { fitFace, isSum } from '../../../bot/media/fit-face.ts';
import { fitFaces } from '../../../bot/media/fit-faces.ts';

const LIMITS = {
  maxWidth: 400,
  maxHeight: 300,
  size: 110,
  phraseFrom: 60,
  wordFrom: 44,
  minSize: 28,
};
const lines = (text: string) => fitFace(text, LIMITS).lines;

describe('fitFace', () => {
  it('never breaks a sum, however small it grows', () => {
    expect(lines('7 + ? = 10')).toEqual(['7 + ? = 10']);
    expect(lines('1000 − ? = 999')).toEqual(['1000 − ? = 999']);
  });

  it('keeps a word whole while it is large enough', () => {
    expect(lines('fourteen')).toEqual(['fourteen']);
    expect(lines('vyf-en-twintig')).toEqual(['vyf-en-twintig']);
  });

  it('breaks a phrase between its words before it grows small', () => {
    expect(lines('la moitié de 14')).toEqual(['la moitié', 'de 14']);
  });

  it('breaks a long word after its hundreds, with a hyphen', () => {
    expect(lines('neunhundertneunundneunzig')).toEqual(['neunhundert-', 'neunundneunzig']);
  });

  it('breaks at hyphens that are there already and adds none', () => {
    expect(lines('neuf-cent-quatre-vingt-dix-neuf').join('')).toBe(
      'neuf-cent-quatre-vingt-dix-neuf',
    );
  });

  it('breaks at a soft hyphen it was given, and hides those it does not need', () => {
    expect(lines('acht\u00adzehn')).toEqual(['achtzehn']);
    const long = 'abcdefghijklm\u00adnopqrstuvwxyz';
    expect(fitFace(long, { ...LIMITS, maxWidth: 350 }).lines).toEqual([
      'abcdefghijklm-',
      'nopqrstuvwxyz',
    ]);
  });

  it('cuts what is too long even so, at the smallest size', () => {
    const { lines: cut, size } = fitFace('w'.repeat(90), LIMITS);
    expect(size).toBe(28);
    expect(cut).toHaveLength(1);
    expect(cut[0]).toMatch(/^w+…$/);
  });

  it('sets no more lines than its height holds', () => {
    const flat = { ...LIMITS, maxHeight: 40 };
    expect(fitFace('seven hundred and seventy-seven', flat).lines).toHaveLength(1);
  });
});

describe('fitFaces', () => {
  it('sets all sums at one size', () => {
    const sizes = fitFaces(['3 + 4', '17 + ? = 20'], { ...LIMITS, maxWidth: 130 });
    expect(sizes).toHaveLength(2);
    expect(sizes[0]?.size).toBe(sizes[1]?.size);
  });

  it('sets no word more than 1.4 times as large as the smallest', () => {
    const [short, long] = fitFaces(['two', 'seven hundred and seventy-seven'], LIMITS);
    expect((short?.size ?? 0) / (long?.size ?? 0)).toBeLessThanOrEqual(1.4);
    expect(fitFace('two', LIMITS).size / (long?.size ?? 0)).toBeGreaterThan(1.4);
  });

  it('is empty for no cards', () => {
    expect(fitFaces([], LIMITS)).toEqual([]);
  });
});

describe('isSum', () => {
  it('is anything without a word in it', () => {
    expect(isSum('7 + ? = 10')).toBe(true);
    expect(isSum('half of 14')).toBe(false);
  });
});
