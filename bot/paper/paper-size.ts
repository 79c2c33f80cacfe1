/**
 * The sheets a school printer holds, upright, in points of 1/72 inch. A4 is 210 mm by 297 mm (ISO 216); Letter is 8.5 in by 11 in
 * (ANSI/ASME Y14.1, size A). Both from memory.
 */
export const PAPERS = {
  a4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
} as const;

/** One of {@link PAPERS}. */
export type PaperSize = keyof typeof PAPERS;

/** Points in a millimetre. */
export const MM = 72 / 25.4;

/** White edge on every side, in points: 12 mm. Home printers leave 4 to 6 mm unprinted (common practice, no source). */
export const EDGE = 12 * MM;

/** Width between the edges, in points. */
export function innerWidth(paper: PaperSize): number {
  return PAPERS[paper].width - 2 * EDGE;
}
