/**
 * Contrast of two `#rrggbb` colours, 1 to 21, by the definition of "contrast ratio" and "relative luminance"
 * in WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio).
 */
export function contrastRatio(a: string, b: string): number {
  const [lighter = 0, darker = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
