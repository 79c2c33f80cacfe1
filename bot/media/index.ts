/** Pictures: pure templates that make SVG drawings, and the painter that turns them into PNG files. */
export { type CardSheetInput, cardSheet } from './card-sheet.ts';
export type { DayState } from './day-mark.ts';
export {
  type DigestPictureInput,
  type DigestRow,
  digestPicture,
  type StrandScore,
} from './digest-picture.ts';
export type { Drawing } from './drawing.ts';
export { drawable, hasGlyphs, measure } from './font.ts';
export { createPainter, type Painter } from './painter.ts';
export { PALETTE } from './palette.ts';
export {
  type ResultCardInput,
  type ResultLine,
  resultCard,
} from './result-card.ts';
export { type RunSheetInput, runSheet } from './run-sheet.ts';
export type { SayAgainCard } from './say-again-cards.ts';
export { ENGLISH, type PictureWords } from './words.ts';
