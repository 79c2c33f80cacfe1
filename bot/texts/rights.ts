import type { ErasingChild, OwnChild } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** To another helper of a child that is being erased. */
export function erasingForHelper({ nickname }: ErasingChild): Text {
  return lines(
    bold(say('rights-erasing-for-helper', { child: name(nickname) })),
    say('rights-another-asked'),
    say('rights-until-then'),
  );
}

/** To another helper, when the wish was taken back. */
export function keptForHelper({ nickname }: ErasingChild): Text {
  return lines(
    bold(say('rights-kept-for-helper', { child: name(nickname) })),
    say('rights-took-it-back'),
  );
}

/** To a teacher of a child that is being erased. By its number alone, and without reasons. */
export function erasingForTeacher({ number, classTitle }: ErasingChild): Text {
  return lines(
    bold(say('rights-erasing-for-teacher', { number, class: name(classTitle) })),
    say('rights-off-the-list'),
  );
}

/** To a teacher, when the wish was taken back. */
export function keptForTeacher({ number, classTitle }: ErasingChild): Text {
  return lines(
    bold(say('rights-kept-for-teacher', { number, class: name(classTitle) })),
    say('rights-family-took-back'),
  );
}

/** Beside the two files of a child. */
export function dataOf(nickname: string): Text {
  return lines(
    bold(say('rights-data-of', { child: name(nickname) })),
    say('rights-two-files'),
    say('rights-chat-is-yours'),
  );
}

/** Which child is to be erased, when there are several. */
export function chooseToErase(children: readonly OwnChild[]): Text {
  return lines(
    bold(say('rights-which-child')),
    say('rights-whose', { children: listOf(children.map(({ nickname }) => name(nickname))) }),
  );
}

/** Asking once before a child is erased. */
export function askToErase(nickname: string): Text {
  return lines(
    bold(say('rights-ask', { child: name(nickname) })),
    say('rights-ask-at-once'),
    say('rights-ask-after-a-day'),
    say('rights-ask-others'),
    say('rights-ask-copy'),
  );
}

/** After the wish. */
export function erasing(nickname: string): Text {
  return lines(
    bold(say('rights-erasing', { child: name(nickname) })),
    say('rights-gone-in-a-day'),
    say('rights-undo', { undo: BUTTONS.undo }),
  );
}

/** When another helper's wish is running. */
export function erasingByAnother(nickname: string): Text {
  return lines(
    bold(say('rights-erasing-already', { child: name(nickname) })),
    say('rights-only-they'),
    say('rights-copy-until-then'),
  );
}

/** After the wish was taken back. */
export function keptAfterAll(nickname: string): Text {
  return lines(bold(say('rights-stays', { child: name(nickname) })), say('rights-nothing-lost'));
}

/** After deciding against it. */
export function notErased(): Text {
  return lines(say('rights-not-erased'));
}

/** For somebody about whom nothing is kept as a helper. */
export function nothingHeld(): Text {
  return lines(say('rights-nothing-held'));
}

/** For the operator, after `npm run erase`. */
export function erasedByOperator(done: boolean, childId: string): string {
  return done
    ? say('rights-operator-erased', { child: childId })
    : say('rights-operator-no-child', { child: childId });
}
