import { InputFile } from 'grammy';
import type { SchoolClass } from '../../db/index.ts';
import type { SchoolDay, WeekSummary } from '../../drills/index.ts';
import type { Painter } from '../media/index.ts';
import { digestDrawing } from './digest-drawing.ts';
import { digestTable } from './digest-table.ts';
import { digestFileName } from './file-name.ts';

/** Sharp enough to print: two pixels for each unit of the drawing. */
const PIXELS_A_UNIT = 2;

/** The picture as a file: as a photo the service would blur it. */
export function pictureFile(
  painter: Painter,
  schoolClass: SchoolClass,
  day: SchoolDay,
  summary: WeekSummary,
): InputFile {
  const drawing = digestDrawing(schoolClass.title, summary);
  const bytes = painter.paint(drawing, Math.round(drawing.width * PIXELS_A_UNIT));
  return new InputFile(bytes, digestFileName(schoolClass, day, 'png'));
}

/** The table as a file. */
export function tableFile(
  schoolClass: SchoolClass,
  day: SchoolDay,
  summary: WeekSummary,
): InputFile {
  const bytes = Buffer.from(digestTable(summary), 'utf8');
  return new InputFile(bytes, digestFileName(schoolClass, day, 'csv'));
}
