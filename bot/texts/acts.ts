import type { KeptAct, StoredAct, Undone } from '../../db/index.ts';
import { localTimeAt } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { shorten } from './quote.ts';
import { bold, lines, name, type Text } from './words.ts';

const TITLE_LENGTH = 24;

/**
 * What a teacher did, in few words, as it stands on a button and after "Taken back:". `nickname` is that of the child it is
 * about.
 */
export function actWords(act: StoredAct, nickname: string | null): string {
  const child = nickname === null ? say('acts-some-child') : name(nickname);
  switch (act.kind) {
    case 'greetingEnded':
      return say(act.before.nextId ? 'acts-greeting-replaced' : 'acts-greeting-removed');
    case 'childrenAdded':
      return say('acts-children-added', { count: act.before.childIds.length });
    case 'childArchived':
      return say('acts-child-archived', { child });
    case 'childMoved':
      return say('acts-child-moved', { child });
    case 'proposalAccepted':
      return say('acts-proposal');
    case 'planUsed':
      return say('acts-plan-used');
    case 'bookChanged':
      return say('acts-book-changed', { book: shortTitle(act.before.title) });
    case 'bookPutAway':
      return say('acts-book-put-away', { book: shortTitle(act.before.title) });
    case 'draftReplaced':
      return say('acts-draft');
    case 'termChanged':
      return say(act.before.started === null ? 'acts-term-ended' : 'acts-term-made');
    case 'breaksAdded':
      return say('acts-breaks-added', { count: act.before.breakIds.length });
    case 'breakRemoved':
      return say('acts-break-removed', { title: shortTitle(act.before.title) });
    case 'classArchived':
      return say('acts-class-archived');
    case 'teacherRemoved':
      return say('acts-teacher-removed');
    case 'termWeekRemoved':
      return say('acts-term-week', { week: act.before.week });
    case 'pagesSet': {
      const { childId, placeIds, title } = act.before;
      const book = shortTitle(title);
      return childId === undefined
        ? say('acts-pages', { count: placeIds.length, book })
        : say('acts-page', { child, book });
    }
  }
}

function shortTitle(title: string): string {
  return shorten(title, TITLE_LENGTH);
}

/** Over the acts of a day that can be taken back. */
export function actsToUndo(acts: readonly KeptAct[], page: number, pages: number): Text {
  if (acts.length === 0) return lines(say('acts-none'));
  return lines(
    bold(say('acts-title')),
    say('acts-tap'),
    pages > 1 ? say('acts-on-page', { page: page + 1, pages }) : null,
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
  return again ? say('acts-again') : say('acts-taken-back', { act: actWords(act, nickname) });
}

/** `/undo` from somebody who is no teacher. */
export function undoIsForTeachers(): Text {
  return lines(say('acts-for-teachers', { fix: BUTTONS.fix }));
}
