import { lines, type Text } from './words.ts';

/** Stands where a child's nickname would: on every screen and picture of a preview. */
export const PREVIEW_NAME = 'Preview';

/** Over the beginning of a preview. */
export function previewNote(): Text {
  return lines('Preview: what a family gets on the next evening. Nothing you tap here is kept.');
}

/** What is left of a preview once it is ended. */
export function previewOver(): Text {
  return lines('The preview is over. Nothing of it was kept.');
}
