/** What one TrueType file says about its glyphs. */
export interface FontTable {
  /** Whether the file has a drawn glyph for this code point. */
  readonly has: (codePoint: number) => boolean;
  /** Advance width in em; a missing code point takes the width of the font's "missing" glyph. */
  readonly advance: (codePoint: number) => number;
}

type GlyphIndex = (codePoint: number) => number;

/**
 * Reads advance widths straight from a TrueType file (tables `head`, `hhea`, `hmtx`, `cmap` format 12, else 4).
 *
 * Kerning is not applied: a measured line may be a little wider than the drawn one.
 *
 * @throws {RangeError} when a needed table is missing.
 * @see https://learn.microsoft.com/typography/opentype/spec/cmap
 */
export function readFontTable(bytes: Uint8Array): FontTable {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const unitsPerEm = view.getUint16(tableOffset(view, 'head') + 18);
  const longMetrics = view.getUint16(tableOffset(view, 'hhea') + 34);
  const widths = tableOffset(view, 'hmtx');
  const glyphOf = glyphIndex(view, tableOffset(view, 'cmap'));
  return {
    has: (codePoint) => glyphOf(codePoint) > 0,
    // Glyphs past the last long metric share its width.
    advance: (codePoint) =>
      view.getUint16(widths + 4 * Math.min(glyphOf(codePoint), longMetrics - 1)) / unitsPerEm,
  };
}

function tableOffset(view: DataView, tag: string): number {
  for (let i = 0; i < view.getUint16(4); i++) {
    const entry = 12 + 16 * i;
    const name = [0, 1, 2, 3].map((k) => String.fromCharCode(view.getUint8(entry + k))).join('');
    if (name === tag) return view.getUint32(entry + 8);
  }
  throw new RangeError(`The font file has no "${tag}" table: use an unchanged TrueType file.`);
}

function glyphIndex(view: DataView, cmap: number): GlyphIndex {
  const subtables = Array.from({ length: view.getUint16(cmap + 2) }, (_, i) => {
    const offset = cmap + view.getUint32(cmap + 8 + 8 * i);
    return { offset, format: view.getUint16(offset) };
  });
  const full = subtables.find(({ format }) => format === 12);
  if (full) return (codePoint) => lookUpGroups(view, full.offset, codePoint);
  const basic = subtables.find(({ format }) => format === 4);
  if (basic) return (codePoint) => lookUpSegments(view, basic.offset, codePoint);
  throw new RangeError('The font file has no character map of format 4 or 12.');
}

function lookUpGroups(view: DataView, offset: number, codePoint: number): number {
  const groups = view.getUint32(offset + 12);
  for (let i = 0; i < groups; i++) {
    const group = offset + 16 + 12 * i;
    const first = view.getUint32(group);
    if (codePoint < first) return 0;
    if (codePoint <= view.getUint32(group + 4))
      return view.getUint32(group + 8) + codePoint - first;
  }
  return 0;
}

function lookUpSegments(view: DataView, offset: number, codePoint: number): number {
  const doubled = view.getUint16(offset + 6);
  for (let i = 0; i < doubled; i += 2) {
    if (codePoint > view.getUint16(offset + 14 + i)) continue;
    const first = view.getUint16(offset + 16 + doubled + i);
    if (codePoint < first) return 0;
    const delta = view.getInt16(offset + 16 + 2 * doubled + i);
    const rangeAt = offset + 16 + 3 * doubled + i;
    const range = view.getUint16(rangeAt);
    if (range === 0) return (codePoint + delta) & 0xffff;
    const glyph = view.getUint16(rangeAt + range + 2 * (codePoint - first));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}
