/** A painted picture with its name. `width` and `height` are CSS px of the design. */
export interface Painted {
  readonly name: string;
  readonly png: Uint8Array;
  readonly pixels: number;
  readonly width: number;
  readonly height: number;
}

/** A heading and painted pictures. */
export interface PaintedRoom {
  readonly title: string;
  readonly pictures: readonly Painted[];
}

/** One page with everything in it: every picture at its size on a phone, with its bytes, in colour or, ticked, in grey. */
export function galleryPage(rooms: readonly PaintedRoom[]): string {
  const all = rooms.flatMap(({ pictures }) => pictures);
  const bytes = all.reduce((sum, { png }) => sum + png.length, 0);
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Pictures</title>
<meta name="viewport" content="width=device-width"><style>${STYLE}</style></head><body>
<h1>Pictures</h1>
<p>${all.length} pictures, ${bytes.toLocaleString('en')} bytes. Each is shown as wide as on a phone.</p>
<p><label><input type="checkbox" id="grey"> in greyscale</label></p>
${rooms.map(roomHtml).join('\n')}
</body></html>
`;
}

const STYLE = `
body { background: #fff; color: #222; font: 16px/1.4 system-ui, sans-serif; margin: 24px; }
section { display: flex; flex-wrap: wrap; gap: 24px; align-items: start; }
figure { margin: 0; }
figcaption { max-width: 360px; padding-bottom: 4px; }
img { display: block; border: 1px solid #767676; }
body:has(#grey:checked) img { filter: grayscale(1); }
`;

function roomHtml({ title, pictures }: PaintedRoom): string {
  return `<h2>${escaped(title)}</h2><section>${pictures.map(figure).join('\n')}</section>`;
}

function figure({ name, png, pixels, width, height }: Painted): string {
  const shown = Math.min(width, 360);
  const high = Math.round((height * shown) / width);
  const size = `${pixels} pixels wide, ${png.length.toLocaleString('en')} bytes`;
  const data = Buffer.from(png).toString('base64');
  return `<figure><figcaption>${escaped(name)}<br>${size}</figcaption><img width="${shown}" height="${high}" alt="${escaped(name)}" src="data:image/png;base64,${data}"></figure>`;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
