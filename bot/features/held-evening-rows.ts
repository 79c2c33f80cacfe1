import type { HeldData } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { heldCode } from '../texts/held-table.ts';
import { type HeldRow, sinceRow } from './held-row.ts';

type Evening = HeldData['evenings'][number];

/** An evening in the table of everything kept: its drill, how it went, and each mark, earlier revisions too. */
export function eveningRows(evening: Evening): HeldRow[] {
  const { day, pages, drill } = evening;
  const what = say('held-table-evening');
  const target = pages === null ? '' : say('words-pages', pages);
  return [
    [what, day, say('held-table-drill'), JSON.stringify(drill), target],
    ...sinceRow(what, evening.startedAt, say('held-table-started')),
    ...sinceRow(what, evening.declinedAt, say('held-table-not-today')),
    ...sinceRow(what, evening.stoppedAt, say('held-table-stopped')),
    ...evening.marks.map(markRow),
    ...evening.runs.map(runRow),
    ...evening.scores.map(({ part, rung, right, asked, at }): HeldRow => {
      const more = say('held-table-score-more', { part: part + 1, asked });
      return [say('held-table-score'), at, rung, right, more];
    }),
    ...evening.pagesDone.map(({ at, pages: done, revision }): HeldRow => {
      const more = say('held-table-revision', { revision });
      return [say('held-table-pages-done'), at, day, done, more];
    }),
  ];
}

function markRow(mark: Evening['marks'][number]): HeldRow {
  const { part, card, way, revision, at, fact, right } = mark;
  const more = say('held-table-mark-more', {
    part: part + 1,
    card: card + 1,
    way: heldCode(way),
    revision,
  });
  const value = right ? say('held-table-right') : say('held-table-not-yet');
  return [say('held-table-mark'), at, fact, value, more];
}

function runRow(run: Evening['runs'][number]): HeldRow {
  const { part, length, start, step, revision, at, rung, said } = run;
  const more = say('held-table-run-more', { part: part + 1, length, start, step, revision });
  return [say('held-table-run'), at, rung, said, more];
}
