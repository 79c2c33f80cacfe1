import { say } from '../language/index.ts';
import { lines, type Text } from './words.ts';

/** Stands where a child's nickname would: on every screen and picture of a preview. */
export function previewName(): string {
  return say('preview-name');
}

/** Over the beginning of a preview. A draft reaches no family before it is in use. */
export function previewNote(isDraft: boolean): Text {
  return lines(isDraft ? say('preview-draft') : say('preview-plan'));
}

/** What is left of a preview once it is ended. */
export function previewOver(): Text {
  return lines(say('preview-over'));
}
