import { expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { wordsOf } from './open-pdf.ts';
import { twoReports, weekPaper } from './week-samples.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

// The two whose words are longest; French has narrow blanks before its signs.
it.each([
  ['de', 'an drei oder mehr Tagen geübt', 'zu Hause Kopfrechnen geübt'],
  ['fr', 'trois jours ou plus', 'du calcul mental à la maison'],
] as const)(
  'a week and reports in %s stay within the edges and apart, in the language of who prints',
  async (language, answer, lead) => {
    const pages = readIn(language, () => [...weekPaper(24), ...twoReports()]);
    const read = await printed(pages);
    expect(read).toHaveLength(3);
    for (const page of read) {
      expectWithinEdges(page);
      expectApart(page);
    }
    const [week = '', report = ''] = read.map(wordsOf);
    expect(week).toContain(answer);
    expect(report).toContain(lead);
  },
);
