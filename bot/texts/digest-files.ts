import { say } from '../language/index.ts';

/** For a picture, table or page of a week in which there is nothing to draw. */
export function noDigestFile(): string {
  return say('digest-files-nothing');
}

/** For a picture that cannot be drawn. */
export function noPicture(): string {
  return say('digest-files-no-picture');
}
