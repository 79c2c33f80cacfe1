/** Pictures: pure templates that make SVG drawings, and the painter that turns them into PNG files. */
export { type AnsweredCard, type AnswerSheetInput, answerSheet } from './answer-sheet.ts';
export { type CardFrameInput, cardFrame } from './card-frame.ts';
export { type CardSheetInput, cardSheet } from './card-sheet.ts';
export { type ClassMapInput, classMap, type MapRow } from './class-map.ts';
export type { MapCell, Standing } from './class-map-cell.ts';
export {
  type ClockAidInput,
  type ClockAidSheetInput,
  clockAid,
  clockAidSheet,
} from './clock-aid.ts';
export type { DayState } from './day-mark.ts';
export {
  type DigestPictureInput,
  type DigestRow,
  digestPicture,
} from './digest-picture.ts';
export type { Drawing } from './drawing.ts';
export { drawable, hasGlyphs, measure } from './font.ts';
export { loneCard } from './lone-card.ts';
export { endFrame, type ReadyFrameInput, readyFrame, restFrame } from './outer-frames.ts';
export { createPainter, type Painter } from './painter.ts';
export { PALETTE } from './palette.ts';
export { type ProgressInput, progressPicture } from './progress-picture.ts';
export {
  type ResultCardInput,
  type ResultLine,
  resultCard,
} from './result-card.ts';
export { type RunSheetInput, runAnswerSheet, runSheet } from './run-sheet.ts';
export type { SayAgainCard } from './say-again-cards.ts';
export type { StrandScore } from './strand-score.ts';
export type { StrandWeeks } from './strand-weeks.ts';
export { type TrendInput, trendPicture } from './trend-picture.ts';
export { type PictureWords, pictureWords } from './words.ts';
