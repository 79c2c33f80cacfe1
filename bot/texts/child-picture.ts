import { say } from '../language/index.ts';
import { numbered } from './children.ts';
import { lines, type Text } from './words.ts';

/** Over the dots of a child's evenings. */
export function evenings(practised: number): string {
  return say('child-picture-evenings', { count: practised });
}

/** Under a child's own picture. */
export function ownPast(): string {
  return say('child-picture-footer');
}

/** With the picture. */
export function childPictureSent(child: {
  readonly number: number;
  readonly nickname: string;
}): Text {
  return lines(say('child-picture-sent', { child: numbered(child) }));
}

/** For a picture of a child that has not practised. */
export function noChildPicture(): string {
  return say('child-picture-none');
}
