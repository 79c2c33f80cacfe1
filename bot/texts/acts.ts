import type { KeptAct, StoredAct, Undone } from '../../db/index.ts';
import { localTimeAt } from '../../db/index.ts';
import { shorten } from './quote.ts';
import { bold, count, lines, name, type Text } from './words.ts';

const BOOK_TITLE_LENGTH = 24;

/**
 * What a teacher did, in few words, as it stands on a button and after "Taken back:". `nickname` is that of the child it is
 * about.
 */
export function actWords(act: StoredAct, nickname: string | null): string {
  const child = nickname === null ? 'a child' : name(nickname);
  switch (act.kind) {
    case 'greetingEnded':
      return act.before.nextId ? 'greeting replaced' : 'greeting removed';
    case 'childrenAdded':
      return `${count(act.before.childIds.length, 'child', 'children')} added`;
    case 'childArchived':
      return `${child} archived`;
    case 'childMoved':
      return `${child} moved`;
    case 'proposalAccepted':
      return 'steps of the week plan';
    case 'planUsed':
      return 'week plan put in use';
    case 'bookChanged':
      return `${shorten(act.before.title, BOOK_TITLE_LENGTH)} changed`;
    case 'bookPutAway':
      return `${shorten(act.before.title, BOOK_TITLE_LENGTH)} put away`;
    case 'draftReplaced':
      return 'changes to the week plan dropped';
    case 'termChanged':
      return act.before.started === null ? 'term ended' : 'term made';
    case 'breaksAdded':
      return `${count(act.before.breakIds.length, 'break', 'breaks')} added`;
    case 'breakRemoved':
      return `break ${shorten(act.before.title, BOOK_TITLE_LENGTH)} removed`;
    case 'classArchived':
      return 'class archived';
    case 'teacherRemoved':
      return 'co-teacher removed';
    case 'termWeekRemoved':
      return `week ${act.before.week} of the term taken out`;
    case 'pagesSet': {
      const { childId, placeIds, title } = act.before;
      const book = shorten(title, BOOK_TITLE_LENGTH);
      return childId === undefined
        ? `page of ${count(placeIds.length, 'child', 'children')} in ${book}`
        : `${child}’s page in ${book}`;
    }
  }
}

/** Over the acts of a day that can be taken back. */
export function actsToUndo(acts: readonly KeptAct[], page: number, pages: number): Text {
  if (acts.length === 0) {
    return lines('There is nothing to take back. What you change can be taken back for a day.');
  }
  return lines(
    bold('What can be taken back'),
    'Tap what shall be as it was. Each can be taken back for a day after it was done.',
    pages > 1 ? `Page ${page + 1} of ${pages}` : null,
  );
}

/** An act's button: when it was done, in the class's own time, and what it was. The class is named when there are several. */
export function actButton(act: KeptAct, isOneOfSeveral: boolean): string {
  const { time } = localTimeAt(act.at, act.zone);
  const words = `${time} · ${actWords(act, act.nickname)}`;
  return isOneOfSeveral ? `${words} · ${name(act.classTitle)}` : words;
}

/** The line over a class's home after Undo. */
export function takenBack({ act, again }: Undone, nickname: string | null): string {
  return again ? 'That was taken back already.' : `Taken back: ${actWords(act, nickname)}.`;
}

/** `/undo` from somebody who is no teacher. */
export function undoIsForTeachers(): Text {
  return lines(
    '/undo is for teachers. To change a mark, tap Change a mark under the result; /today shows today’s drill.',
  );
}
