import type { HeldData } from '../../db/index.ts';
import { cell } from '../digest/digest-table.ts';

/** Tells spreadsheet programs that the bytes are UTF-8. */
const BYTE_ORDER_MARK = '\ufeff';

type Row = readonly [
  what: string,
  when: string,
  name: string,
  value: string | number,
  more: string,
];

/**
 * Everything kept about a child as a table that opens in a spreadsheet: a row a thing, with what it is, when, its name, its
 * value and more. Comma-separated values after RFC 4180, as the digest's table.
 */
export function heldTable(data: HeldData): string {
  const rows: readonly (readonly (string | number)[])[] = [
    ['what', 'when', 'name', 'value', 'more'],
    ...aboutChild(data),
    ...aboutYou(data),
    ...data.evenings.flatMap(aboutEvening),
    ...data.memory.map((known): Row => {
      const more = `right ${known.right} of ${known.asked}, ${known.streak} in a row, ${known.model} ${known.state.join(' ')}`;
      return ['memory of a fact', known.lastDay ?? '', known.fact, known.asked, more];
    }),
  ];
  return BYTE_ORDER_MARK + rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function aboutChild({ child, slips, books, places, madeAt }: HeldData): Row[] {
  const { adjustment } = child;
  return [
    ['child', child.addedAt, 'nickname', child.nickname, ''],
    ['child', child.addedAt, 'number', child.number, ''],
    ['child', madeAt, 'class', child.classTitle, child.zone],
    ['child', madeAt, 'evening time', child.eveningTime, ''],
    ...(child.archivedAt === null ? [] : [['child', child.archivedAt, 'left', '', ''] as const]),
    ...(child.erasingSince === null
      ? []
      : [['child', child.erasingSince, 'being erased', '', ''] as const]),
    ...(adjustment === null
      ? []
      : [
          [
            'adjustment',
            adjustment.since,
            'steps',
            adjustment.steps,
            `${adjustment.fewer ? 'fewer cards' : ''} ${adjustment.untimed ? 'untimed' : ''}`.trim(),
          ] as const,
        ]),
    ...slips.map(
      (slip): Row => ['slip', slip.issuedAt, 'uses left', slip.usesLeft, `until ${slip.expiresAt}`],
    ),
    ...books.map(
      (book): Row => [
        'own workbook',
        '',
        book.title,
        book.pagesADay,
        `pages ${book.firstPage} to ${book.lastPage}`,
      ],
    ),
    ...places.map(
      (place): Row => ['place in a workbook', place.saidAt, place.book, place.page, ''],
    ),
  ];
}

function aboutYou({ you }: HeldData): Row[] {
  return [
    ['you', you.joinedAt, 'chat account', you.chatId, ''],
    ['you', you.joinedAt, 'how drills are shown', you.way, ''],
    ...you.agreements.map(
      (given): Row => [
        'agreement',
        given.agreedAt,
        given.textVersion,
        given.language,
        given.withdrawnAt === null ? '' : `withdrawn ${given.withdrawnAt}`,
      ],
    ),
    ...you.messages.map(
      (sent): Row => ['message', sent.sentAt ?? sent.day, sent.kind, sent.status, ''],
    ),
  ];
}

function aboutEvening(evening: HeldData['evenings'][number]): Row[] {
  const { day, pages } = evening;
  const target = pages === null ? '' : `pages ${pages.from} to ${pages.to}`;
  const part = (index: number) => `part ${index + 1}`;
  return [
    ['evening', day, 'drill', JSON.stringify(evening.drill), target],
    ...(evening.startedAt === null
      ? []
      : [['evening', evening.startedAt, 'started', '', ''] as const]),
    ...(evening.declinedAt === null
      ? []
      : [['evening', evening.declinedAt, 'not today', '', ''] as const]),
    ...evening.marks.map((mark): Row => {
      const more = `${part(mark.part)}, card ${mark.card + 1}, ${mark.way}, revision ${mark.revision}`;
      return ['mark', mark.at, mark.fact, mark.right ? 'right' : 'not yet', more];
    }),
    ...evening.runs.map((run): Row => {
      const more = `${part(run.part)}, of ${run.length} from ${run.start} in steps of ${run.step}, revision ${run.revision}`;
      return ['counting run', run.at, run.rung, run.said, more];
    }),
    ...evening.scores.map((score): Row => {
      return ['score', score.at, score.rung, score.right, `${part(score.part)}, of ${score.asked}`];
    }),
    ...evening.pagesDone.map((done): Row => {
      return ['pages done', done.at, day, done.pages, `revision ${done.revision}`];
    }),
  ];
}
