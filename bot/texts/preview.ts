import { lines, type Text } from './words.ts';

/** Stands where a child's nickname would: on every screen and picture of a preview. */
export const PREVIEW_NAME = 'Preview';

/** Over the beginning of a preview. A draft reaches no family before it is in use. */
export function previewNote(isDraft: boolean): Text {
  const when = isDraft ? 'once you put it in use' : 'on the next evening';
  return lines(`Preview: what a family gets ${when}. Nothing you tap here is kept.`);
}

/** What is left of a preview once it is ended. */
export function previewOver(): Text {
  return lines('The preview is over. Nothing of it was kept.');
}
