import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Way } from '../../db/index.ts';
import { type Clips, createClipMaker } from '../clip/index.ts';
import { readIn } from '../language/index.ts';
import { createPainter } from '../media/index.ts';
import type { Means } from '../screens/means.ts';
import { type Preview, previewScreen } from '../screens/preview-screen.ts';
import { OFFERED, type PreviewState } from '../screens/preview-state.ts';
import type { Screen } from '../screens/screen.ts';
import { previewNote } from '../texts/preview.ts';

/** Where a preview goes, and how its cards are shown. `ffmpeg` is a program to code clips with in place of ours. */
export interface PreviewWanted {
  readonly folder: string;
  readonly way: Way;
  readonly ffmpeg: string | undefined;
}

/** The second card was missed: so the result shows how that looks. */
const ONE_MISSED = 0b10;

/**
 * Writes every message of an evening, from its arrival to its result, to `evening.md`, with what is seen above each in
 * `pictures`. One card of the first part is missed. `onMessage` hears how many of all messages are done.
 */
export async function writePreview(
  preview: Preview,
  { folder, way, ffmpeg }: PreviewWanted,
  onMessage: (done: number, all: number) => void = () => {},
): Promise<{ messages: number; files: number }> {
  const pictures = join(folder, 'pictures');
  await rm(pictures, { recursive: true, force: true });
  await mkdir(pictures, { recursive: true });
  const clips = way === 'clip' ? patientClips(ffmpeg) : undefined;
  const means: Means = { painter: createPainter(), way, clips };
  const { language } = preview.schoolClass;
  const page: string[] = [];
  let files = 0;
  try {
    const states = statesOf(preview);
    for (const [at, state] of states.entries()) {
      onMessage(at, states.length);
      const name = `message-${String(at + 1).padStart(2, '0')}`;
      const file = await readIn(language, async () => {
        const screen = previewScreen(preview, state, means);
        const visual = await visualOf(screen);
        page.push(shown(preview, screen, visual && `pictures/${name}.${visual.ending}`));
        return visual;
      });
      if (!file) continue;
      files += 1;
      await writeFile(join(pictures, `${name}.${file.ending}`), file.bytes);
    }
    onMessage(states.length, states.length);
  } finally {
    await clips?.close();
  }
  await writeFile(join(folder, 'evening.md'), page.join('\n---\n\n'));
  return { messages: page.length, files };
}

/** A clip is waited for, however long it takes. */
function patientClips(ffmpeg: string | undefined): Clips {
  const maker = createClipMaker(ffmpeg === undefined ? {} : { ffmpeg });
  return { soon: maker.make, ahead: async () => false, close: maker.close };
}

/** The way through an evening: it arrives, each part, the marking of the first, the pages, the result. */
function statesOf({ drill, book }: Preview): PreviewState[] {
  const started = { ...OFFERED, at: 'started' as const };
  const all = drill.parts.map((part, at) => {
    if (part.kind === 'run') return part.length;
    return at === 0 ? ONE_MISSED : 0;
  });
  const parts = all.map((_, at) => ({ ...started, done: all.slice(0, at) }));
  const [first] = parts;
  const marking = first ? [{ ...first, marking: ONE_MISSED }] : [];
  const end = { ...started, done: all };
  const result = book ? [end, { ...end, pages: book.to - book.from + 1 }] : [end];
  return [OFFERED, ...parts.slice(0, 1), ...marking, ...parts.slice(1), ...result];
}

async function visualOf({ clip, picture }: Screen) {
  const video = await clip?.make();
  if (video) return { bytes: video, ending: 'mp4' };
  return picture ? { bytes: picture.paint(), ending: 'png' } : null;
}

/** A message as Markdown: what is seen, the text, the rows of buttons. What belongs to a preview in a chat is left out. */
function shown({ isDraft }: Preview, { text, buttons }: Screen, file: string | null): string {
  const picture = file?.endsWith('.png') ? `![](${file})` : `[clip](${file})`;
  const note = `${previewNote(isDraft).text}\n\n`;
  const own = text.text.startsWith(note) ? text.text.slice(note.length) : text.text;
  const said = own.split('\n').map((line) => `> ${line}  `);
  const rows = buttons
    .slice(0, -1)
    .map((row) => `> ${row.map(({ label }) => `\`${label}\``).join(' ')}  `);
  return [...(file === null ? [] : [picture, '']), ...said, '>', ...rows, ''].join('\n');
}
