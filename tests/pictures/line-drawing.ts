export const INK = '#2b2622';
export const PAPER = '#fffdf7';

/** A drawing with its title and what it shows in words, for who does not see it. Sizes in px; text is centred unless told otherwise. */
export interface LineDrawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
  readonly parts: readonly string[];
}

/** The drawing as an SVG file. */
export function svgPage({ width, height, title, description, parts }: LineDrawing): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title description" font-family="'DejaVu Sans', Verdana, sans-serif" text-anchor="middle" fill="${INK}">
<title id="title">${escaped(title)}</title>
<desc id="description">${escaped(description)}</desc>
<rect width="${width}" height="${height}" fill="#ffffff"/>
${parts.join('\n')}
</svg>
`;
}

/** Text that is safe inside an element. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
