import { create } from 'qrcode';
import { PALETTE } from '../media/palette.ts';
import { num } from '../media/svg.ts';

/** White modules that belong on every side of a QR code (ISO/IEC 18004, from memory). */
const QUIET = 4;

/**
 * A QR code with its quiet zone as SVG shapes, `size` points wide, error correction M: it still reads with 15 % of it lost.
 *
 * @throws {RangeError} for a text longer than 300 characters, whose modules would be too fine to scan from paper.
 * @example
 * qrSquare('https://example.org', { x: 0, y: 0, size: 100 }); // starts with '<path'
 */
export function qrSquare(
  content: string,
  { x, y, size }: { readonly x: number; readonly y: number; readonly size: number },
): string {
  if (content.length > 300) {
    throw new RangeError(`Got a text of ${content.length} characters: a QR code here takes 300.`);
  }
  const { modules } = create(content, { errorCorrectionLevel: 'M' });
  const step = size / (modules.size + 2 * QUIET);
  let path = '';
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (modules.get(row, column) === 0) continue;
      const first = column;
      while (column + 1 < modules.size && modules.get(row, column + 1) !== 0) column += 1;
      const width = (column - first + 1) * step;
      path += `M${num(x + (first + QUIET) * step)} ${num(y + (row + QUIET) * step)}h${num(width)}v${num(step)}h${num(-width)}z`;
    }
  }
  return `<path d="${path}" fill="${PALETTE.ink}"/>`;
}
