import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { createPainter } from '../../bot/media/index.ts';
import { galleryPage } from './gallery-page.ts';
import { galleryRooms } from './gallery-states.ts';

/** Draws every template in every state on one page to look at: `npm run gallery`. */
const FOLDER = fileURLToPath(new URL('../../artefacts/gallery/', import.meta.url));

const painter = createPainter();
const rooms = galleryRooms().map(({ title, exhibits }) => ({
  title,
  pictures: exhibits.map(({ name, drawing, pixels }) => ({
    name,
    pixels,
    width: drawing.width,
    height: drawing.height,
    png: painter.paint(drawing, pixels),
  })),
}));
await mkdir(FOLDER, { recursive: true });
await writeFile(`${FOLDER}index.html`, galleryPage(rooms));
process.stdout.write(`${FOLDER}index.html\n`);
