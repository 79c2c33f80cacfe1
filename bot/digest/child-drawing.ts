import type { ChildReport } from '../../drills/index.ts';
import { type Drawing, drawable, pictureWords, progressPicture } from '../media/index.ts';
import { evenings, ownPast } from '../texts/child-picture.ts';
import { strandName } from '../texts/part-title.ts';
import { dayAndMonth } from '../texts/words.ts';

/** A child's own past as a picture: a dot an evening, then each strand week by week. Null while nothing was practised. */
export function childDrawing(
  child: { readonly number: number; readonly nickname: string },
  { practised, weeks, strands }: ChildReport,
): Drawing | null {
  if (practised === 0 || weeks.length === 0) return null;
  return progressPicture({
    title: `${child.number} · ${drawable(child.nickname, '')}`,
    evenings: practised,
    weekLabels: weeks.map(dayAndMonth),
    strands: strands.map((row) => ({ label: strandName(row.strand), weeks: row.weeks })),
    footer: ownPast(),
    words: { ...pictureWords(), evenings },
  });
}
