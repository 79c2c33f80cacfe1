import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { houseDrawing } from './house-drawing.ts';
import { readImports, roomsOf } from './imports.ts';
import { roomsDrawing } from './rooms-drawing.ts';

/** Where the drawings of the engineer's page are kept. */
export const DRAWINGS = fileURLToPath(new URL('../../bot/guides/pictures/', import.meta.url));

/** The drawings as they should be now, by the name of their file. */
export function architectureNow(): Record<string, string> {
  const imports = readImports();
  return {
    'house.svg': houseDrawing(roomsOf(imports, folderOf)),
    'rooms.svg': roomsDrawing(roomsOf(imports, roomOf)),
  };
}

const ROOTS = /^bot\/(?:main\.ts|suppersums\.js|roots\/|cli\/)/;

/** The folder of the house that a file belongs to. */
function folderOf(file: string): string | null {
  return ROOTS.test(file) ? 'roots' : (file.split('/')[0] ?? null);
}

/** The same, with the rooms of `bot/` apart. */
function roomOf(file: string): string | null {
  const [folder, room, ...rest] = file.split('/');
  return folder === 'bot' && rest.length > 0 && !ROOTS.test(file) ? `bot/${room}` : folderOf(file);
}

// Draws them anew when it is the script that was started: `npm run architecture`.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, svg] of Object.entries(architectureNow())) {
    writeFileSync(join(DRAWINGS, name), svg);
  }
}
