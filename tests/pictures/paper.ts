import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import {
  answerPages,
  cardPages,
  type Page,
  practicePages,
  slipPages,
  squarePages,
  toPdf,
} from '../../bot/paper/index.ts';
import { PAPER_WORDS } from '../../bot/texts/paper.ts';
import { LANGUAGES, type Language } from '../../drills/index.ts';
import { openPdf } from '../bot/paper/open-pdf.ts';
import { days, HARD_NAMES, MADE_AT, mixedCards, slips, slipsInput } from '../bot/paper/samples.ts';
import { twoReports, weekPaper } from '../bot/paper/week-samples.ts';

/** Prints every document from invented data, as PDF and, page by page, as PNG: `npm run paper`, or with a folder to write to. */
const FOLDER = process.argv[2] ?? fileURLToPath(new URL('../../artefacts/paper', import.meta.url));

const words = PAPER_WORDS.en;
const LANGUAGE_TAGS = Object.keys(LANGUAGES) as Language[];

const DOCUMENTS: Readonly<Record<string, readonly Page[]>> = {
  cards: cardPages({ cards: mixedCards(), paper: 'a4' }),
  'cards-ten-letter': cardPages({ cards: mixedCards(), paper: 'letter', perPage: 10 }),
  answers: answerPages({
    title: 'Kingfisher class',
    right: 'week of Mon 14 Sept',
    cards: mixedCards(),
    paper: 'a4',
    words,
  }),
  'number-squares': squarePages({ firsts: [1, 101], paper: 'a4' }),
  practice: practicePages({
    sheets: [
      {
        child: { number: 4, nickname: 'Wren' },
        days: days(5),
        workbook: { title: 'Pebble Path', page: 14 },
      },
      { child: null, days: days(2), workbook: { title: 'Pebble Path', page: null } },
    ],
    right: 'Kingfisher class · Mon 14 Sept to Fri 18 Sept',
    paper: 'a4',
    words,
  }),
  reports: twoReports(),
  'reports-letter': twoReports('letter'),
  week: weekPaper(24),
  'week-of-sixty-letter': weekPaper(60, 'letter'),
  'slips-letter': slipPages(slipsInput(3, { slips: slips(3, HARD_NAMES), paper: 'letter' })),
  ...Object.fromEntries(
    LANGUAGE_TAGS.map((tag) => [
      `slips-${tag}`,
      slipPages(slipsInput(6, { words: PAPER_WORDS[tag] })),
    ]),
  ),
};

await mkdir(FOLDER, { recursive: true });
for (const [name, pages] of Object.entries(DOCUMENTS)) {
  const pdf = await toPdf(pages, { title: name, language: 'en', madeAt: MADE_AT });
  await writeFile(`${FOLDER}/${name}.pdf`, pdf);
  for (const [i, page] of (await openPdf(pdf)).entries()) {
    await writeFile(`${FOLDER}/${name}-${i + 1}.png`, (await page.paint(1.6)).png());
  }
}
