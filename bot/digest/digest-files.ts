import { InputFile } from 'grammy';
import type { SchoolDay, WeekSummary } from '../../drills/index.ts';
import type { Painter } from '../media/index.ts';
import { digestDrawing } from './digest-drawing.ts';
import { digestTable } from './digest-table.ts';

/** Sharp enough to print: two pixels for each unit of the drawing. */
const PIXELS_A_UNIT = 2;

/** The picture as a file: as a photo the service would blur it. Names are plain ASCII, which every client keeps. */
export function pictureFile(
  painter: Painter,
  title: string,
  day: SchoolDay,
  summary: WeekSummary,
): InputFile {
  const drawing = digestDrawing(title, summary);
  const bytes = painter.paint(drawing, Math.round(drawing.width * PIXELS_A_UNIT));
  return new InputFile(bytes, `digest-${day}.png`);
}

/** The table as a file. */
export function tableFile(day: SchoolDay, summary: WeekSummary): InputFile {
  return new InputFile(Buffer.from(digestTable(summary), 'utf8'), `digest-${day}.csv`);
}
