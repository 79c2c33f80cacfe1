import { describe, expect, it } from 'vitest';
import { digest, digestCaution, wobbleList } from '../../../bot/texts/digest.ts';
import { callList } from '../../../bot/texts/digest-calls.ts';
import { strandList, strandsLine } from '../../../bot/texts/digest-strands.ts';
import { type ChildWeek, rungById, type WeekSummary } from '../../../drills/index.ts';
import { practised, splitWeek, summaryOf, WEEK, week } from '../support/kingfisher.ts';

const textOf = (summary: WeekSummary) => digest('Kingfisher class', summary).text;
const firstLine = (children: readonly ChildWeek[], days = WEEK) =>
  textOf(summaryOf(children, days)).split('\n')[0];

describe('the first line of a digest', () => {
  const two = [week(1, 'Wren'), week(2, 'Otto', { evenings: [] })];

  it.each([
    [5, 'three days or more'],
    [3, 'three days or more'],
    [2, 'both days'],
    [1, 'the one day'],
  ])('of %d days says who practised enough', (days, words) => {
    expect(firstLine(two, WEEK.slice(0, days))).toBe(
      `Kingfisher class: 1 of 2 practised on ${words}; nothing to move up yet.`,
    );
  });

  it('names what is ready to move up and how many families to call', () => {
    const silent = week(11, 'Otter', { silentRun: 3, evenings: [] });
    const { rungs } = splitWeek('Wren');
    const summary = { ...summaryOf([week(1, 'Wren'), silent]), rungs };
    expect(textOf(summary).split('\n')[0]).toBe(
      'Kingfisher class: 1 of 2 practised on three days or more; ready to move up: halves of even numbers to 20; families to call: 1.',
    );
  });

  it('counts every family to call, also those the list below has no room for', () => {
    const silent = Array.from({ length: 7 }, (_, at) =>
      week(at + 1, `Wren${at + 1}`, { silentRun: 3, evenings: [] }),
    );
    const [first, ...rest] = textOf(summaryOf(silent)).split('\n');
    expect(first).toMatch(/; families to call: 7\.$/);
    expect(rest.find((line) => line.startsWith('To call: '))).toMatch(/; and 2 more\.$/);
  });

  it('of a week without school days has nothing to tell', () => {
    expect(
      textOf(summaryOf([week(1, 'Wren')], []))
        .split('\n')
        .slice(0, 2),
    ).toEqual(['Kingfisher class: no evenings to tell of.', 'No school days in these seven days.']);
  });

  it('of a class that nobody has joined says so', () => {
    const alone = week(1, 'Wren', { joined: false, evenings: [] });
    expect(firstLine([alone])).toContain('Kingfisher class: no family has joined yet');
    expect(firstLine([])).toBe('Kingfisher class: no family has joined yet.');
  });

  it('of a class that every helper has left says that, not that nobody joined', () => {
    const left = week(1, 'Wren', { joined: false, left: true, evenings: [] });
    const never = week(2, 'Otto', { joined: false, evenings: [] });
    expect(firstLine([left, never])).toContain('Kingfisher class: every helper has left');
  });
});

describe('a digest', () => {
  const five = summaryOf([
    week(1, 'Wren'),
    week(2, 'Otto', { reachable: false, evenings: [] }),
    week(3, 'Juniper', { silentRun: 4, evenings: [] }),
    week(4, 'Tamarind', { joined: false, evenings: [] }),
    week(5, 'Sorrel', { joined: false, left: true, evenings: [] }),
  ]);

  it('says how the evenings ended, what was right, what wobbles and what was done', () => {
    const text = textOf(five);
    expect(text).toContain('\nMon 14 Sept to Fri 18 Sept: 5 evenings practised.\n');
    expect(text).toContain('\nRight of asked: number bonds 40 of 50 (new this week).\n');
    expect(text).toContain('\nWobbling: 3 + 4 = 7; the clock at half past three.\n');
    expect(text).toContain('\nWorkbook: 10 pages done.\n');
  });

  it('counts what was put off, unanswered and undelivered apart, and nothing that was not planned', () => {
    const ended = (['not_today', 'silent', 'unsent'] as const).map((status, at) => ({
      ...practised(WEEK[at] ?? never(), { parts: [], facts: [], pages: null }),
      status,
    }));
    expect(textOf(summaryOf([week(1, 'Wren', { evenings: ended })]))).toContain(
      ': 0 evenings practised, 1 put off, 1 without an answer, 1 not delivered.\n',
    );
  });

  it('keeps families who stopped receiving in a line of their own', () => {
    expect(textOf(five)).toContain(
      '\nTo call: 3. Juniper (4 evenings in a row without an answer); 4. Tamarind (no helper has joined yet).\nNot receiving: 2. Otto (messages no longer arrive); 5. Sorrel (the helper has left).\n',
    );
  });

  it('names a sum and its turned-round twin together, and a step of a count with what comes next', () => {
    const facts = (['add:7+8', 'add:8+7'] as const).map((fact) => ({ fact, right: false }));
    const runs = [{ start: 90, step: 5, length: 5, said: 2 }];
    const evenings = [practised(WEEK[0] ?? never(), { facts, runs })];
    const summary = summaryOf([week(1, 'Wren', { evenings }), week(2, 'Otto', { evenings })]);
    const { text } = wobbleList(summary.wobbling);
    expect(text).toContain('\n7 + 8 = 15 and 8 + 7 = 15: missed 4 of 4, by 2 children\n');
    expect(text).toContain('\nafter 95 in fives, 100: missed 2 of 2, by 2 children\n');
  });

  it('says nothing of pages when nobody was asked for any', () => {
    const evenings = [practised(WEEK[0] ?? never(), { pages: null })];
    expect(textOf(summaryOf([week(1, 'Wren', { evenings })]))).not.toContain('Workbook');
  });

  it('has nine lines and fits into one message of 4096 characters in the largest class with the longest names', () => {
    // The Bot API's limit of a message. Six parts a plan, sixty children, thirty in the smaller group of each.
    const rungs = [
      ...(['bonds.to10', 'takeaway.to10', 'doubles.to10'] as const),
      ...(['halves.to20', 'clock.half', 'clock.mixed'] as const),
    ];
    const children = Array.from({ length: 60 }, (_, at) => {
      const parts = rungs.flatMap((id) => {
        const found = rungById(id);
        const right = at < 30 ? 10 : 2;
        return found ? [{ strand: found.strand, rung: found.id, right, asked: 10 }] : [];
      });
      const evenings = WEEK.map((day) => practised(day, { parts }));
      const call = at < 30 ? { reachable: false } : { silentRun: 4 };
      return week(at + 1, 'W'.repeat(40), { evenings, ...call });
    });
    const text = textOf(summaryOf(children));
    expect(text.split('\n')).toHaveLength(9);
    expect(text.length).toBeLessThan(4_096);
    expect(text).toContain('and 25 more');
  });

  it('ends with what a score is not', () => {
    expect(textOf(summaryOf([])).endsWith(`\n${digestCaution()}`)).toBe(true);
  });
});

describe('the families worth a call', () => {
  const calls = summaryOf(
    Array.from({ length: 8 }, (_, at) => week(at + 1, `Wren${at + 1}`, { reachable: false })),
  ).calls;

  it('are all listed, with a kind word, page by page', () => {
    expect(calls).toHaveLength(8);
    const { text } = callList({ shown: calls.slice(5), page: 1, pages: 2 });
    expect(text.split('\n')).toHaveLength(4);
    expect(text).toContain('page 2 of 2');
    expect(text).toContain('6. Wren6: messages no longer arrive. Has the phone changed?');
  });

  it('say so when there is nobody', () => {
    expect(callList({ shown: [], page: 0, pages: 1 }).text).toContain('Nobody just now.');
  });

  it('never tell a score: they are about families, not about sums', () => {
    expect(callList({ shown: calls, page: 0, pages: 1 }).text).not.toMatch(/right|asked|%/);
  });
});

describe('the strands', () => {
  const one = (change: Partial<WeekSummary['strands'][number]> = {}) => ({
    strand: 'halves' as const,
    right: 80,
    asked: 90,
    children: 9,
    secure: 7,
    notYet: 1,
    tooFew: 0,
    share: { lower: 0, upper: 1 },
    rose: 3,
    slipped: 1,
    change: { kind: 'new' as const },
    weeks: [],
    ...change,
  });
  const before = { right: 7, asked: 10 };

  it('say in one line what is new or has moved, and the rest together', () => {
    const same = { kind: 'same', now: before, before } as const;
    const up = { kind: 'up', now: { right: 9, asked: 10 }, before } as const;
    expect(strandsLine([one({ change: up }), one({ strand: 'clock', change: same })])).toBe(
      'Right of asked: halves 80 of 90 (up from 70 %); clock 80 of 90. The others about as last week.',
    );
    expect(strandsLine([one({ change: same })])).toBe(
      'Right of asked: halves 80 of 90. All about as last week.',
    );
    expect(strandsLine([])).toBeNull();
  });

  it('say one by one how many children are secure and how many moved, and never name one', () => {
    const { text } = strandList([one()]);
    expect(text).toContain(
      '\nhalves 80 of 90, new this week; 7 of 9 secure; 1 not yet; 3 rose; 1 slipped\n',
    );
    expect(text).not.toMatch(/\d\. /);
  });

  it('keep to nine lines when all eight were practised', () => {
    const all = Array.from({ length: 8 }, () => one());
    expect(strandList(all).text.split('\n')).toHaveLength(9);
  });
});

function never(): never {
  throw new Error('the week has a first day');
}
