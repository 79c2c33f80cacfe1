import { InputFile } from 'grammy';
import type { SchoolClass } from '../../db/index.ts';
import type { SchoolDay, WeekSummary } from '../../drills/index.ts';
import type { Drawing, Painter } from '../media/index.ts';
import { digestDrawing, mapDrawing, trendDrawing } from './digest-drawing.ts';
import { digestTable } from './digest-table.ts';
import { classFileName, digestFileName } from './file-name.ts';

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
  return drawingFile(painter, drawing, digestFileName(schoolClass, day, 'png'));
}

/** How sure each child is in each strand, as a file; null while nobody has practised. */
export function mapFile(
  painter: Painter,
  schoolClass: SchoolClass,
  day: SchoolDay,
  summary: WeekSummary,
): InputFile | null {
  if (summary.strands.length === 0) return null;
  const drawing = mapDrawing(schoolClass.title, summary);
  return drawingFile(painter, drawing, classFileName('class-map', schoolClass, day, 'png'));
}

/** The last four weeks of each strand, as a file; null while nobody has practised. */
export function trendFile(
  painter: Painter,
  schoolClass: SchoolClass,
  day: SchoolDay,
  summary: WeekSummary,
): InputFile | null {
  if (summary.strands.length === 0) return null;
  const drawing = trendDrawing(schoolClass.title, summary);
  return drawingFile(painter, drawing, classFileName('four-weeks', schoolClass, day, 'png'));
}

function drawingFile(painter: Painter, drawing: Drawing, name: string): InputFile {
  return new InputFile(painter.paint(drawing, Math.round(drawing.width * PIXELS_A_UNIT)), name);
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
