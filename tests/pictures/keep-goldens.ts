import { mkdir, rm, writeFile } from 'node:fs/promises';
import { GOLDENS, goldenFile, KEPT, paintedNow } from '../bot/media/golden-pictures.ts';

/** Keeps today's pictures as the ones to compare with. Look at the gallery first: what is kept here is called right. */
await rm(GOLDENS, { recursive: true, force: true });
await mkdir(GOLDENS, { recursive: true });
for (const name of KEPT) await writeFile(goldenFile(name), paintedNow(name));
