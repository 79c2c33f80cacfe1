import type { Relation, Tie } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { bold, lines, listOf, name, type Text, weekdayRange } from './words.ts';

/** Below the words after agreeing: who the helper is to the child. */
export function askRelation({ nickname, siblingAge }: Tie): Text {
  return lines(
    bold(say('joining-ask-relation', { name: name(nickname) })),
    say('joining-relation-kept', { age: siblingAge }),
  );
}

/** What the button of a relation says. The age is the school's choice. */
export function relationLabel(relation: Relation, siblingAge: number): string {
  if (relation === 'sibling') return say('joining-sibling', { age: siblingAge });
  return say(`joining-${relation}`);
}

/** The button of whoever does not say. */
export function ratherNot(): string {
  return say('joining-rather-not');
}

/** The button that leaves a choice as it is. */
export function keepIt(): string {
  return say('joining-keep');
}

/** Choosing the time at which drills come. */
export function askTime(time: string): Text {
  return lines(
    bold(say('joining-ask-time')),
    say('joining-time-now', { time }),
    say('joining-time-other'),
  );
}

/** The end of joining: when the drill comes, and where everything can be changed. */
export function allSet({ nickname, eveningTime, schoolClass }: Tie): Text {
  return lines(
    bold(say('joining-all-set')),
    say('joining-comes', {
      name: name(nickname),
      days: weekdayRange(schoolClass.weekdays),
      time: eveningTime,
    }),
    say('joining-change'),
  );
}

/** Before leaving, to the helper of several children. */
export function askWhomToLeave(nicknames: readonly string[]): Text {
  return lines(
    bold(say('joining-leave-whom')),
    say('joining-leave-names', { names: listOf(nicknames.map(name)) }),
    say('joining-leave-effect'),
    say('joining-leave-erase'),
  );
}

/** The button that stops one child. */
export function leaveLabel(nickname: string): string {
  return say('joining-leave-one', { name: name(nickname) });
}

/** The button that stops all children at once. */
export function leaveAllLabel(): string {
  return say('joining-leave-all');
}

/** After leaving one child of several. */
export function leftOne(nickname: string, others: readonly string[]): Text {
  return lines(
    say('joining-left-one', { name: name(nickname) }),
    others.length > 0 ? say('joining-others-go-on', { names: listOf(others.map(name)) }) : null,
    say('joining-come-back'),
  );
}
