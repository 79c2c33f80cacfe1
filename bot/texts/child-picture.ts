import { count, lines, name, type Text } from './words.ts';

/** Over the dots of a child's evenings. */
export function evenings(practised: number): string {
  return `${count(practised, 'evening', 'evenings')} in twelve weeks`;
}

/** Under a child's own picture. */
export const OWN_PAST =
  'This child’s own evenings only. Bars are the share right, as the helper marked it; a short rule is a week without marks.';

/** With the picture. */
export function childPictureSent(child: {
  readonly number: number;
  readonly nickname: string;
}): Text {
  return lines(`${child.number}. ${name(child.nickname)}: own evenings, beside nobody else’s.`);
}

/** For a picture of a child that has not practised. */
export const NO_CHILD_PICTURE =
  'There is nothing to draw yet: no evening of this child was marked in the last twelve weeks.';
