import { type ClipMaker, type ClipSound, createClipMaker } from '../../../bot/clip/index.ts';
import { rungClip, USUAL_EVENING } from './drills.ts';
import { say, table } from './measure.ts';

const CARDS = [5, 10, 15, 20];
const SOUNDS: readonly ClipSound[] = ['none-but-silent', 'tick'];

/** Bytes of clips by rung and number of cards, as they are sent and with no limit, and of a usual evening. */
export async function benchBytes(): Promise<void> {
  const maker = createClipMaker();
  for (const limit of [undefined, 10_000_000]) {
    say(`Bytes of a clip, ${limit === undefined ? 'as sent' : 'at the finest picture'}:`);
    const rows = [
      [
        'rung',
        ...SOUNDS.flatMap((sound) =>
          CARDS.map((n) => `${n} ${sound === 'tick' ? 'tick' : 'silent'}`),
        ),
      ],
    ];
    for (const rung of [...USUAL_EVENING, 'words.to200'])
      rows.push([rung, ...(await bytesOf(maker, rung, limit))]);
    table(rows);
  }
  await benchEvening(maker);
  await maker.close();
}

async function bytesOf(maker: ClipMaker, rung: string, limit?: number): Promise<string[]> {
  const inputs = SOUNDS.flatMap((sound) =>
    CARDS.map((cards) => ({ ...rungClip(rung, 'bytes', cards), sound })),
  );
  const limited = inputs.map((input) =>
    limit === undefined ? input : { ...input, maxBytes: limit },
  );
  const clips = await Promise.all(limited.map(maker.make));
  return clips.map(({ length }) => String(length));
}

async function benchEvening(maker: ClipMaker): Promise<void> {
  for (const sound of SOUNDS) {
    const clips = await Promise.all(
      USUAL_EVENING.map((rung) => maker.make({ ...rungClip(rung, 'evening'), sound })),
    );
    const bytes = clips.map(({ length }) => length);
    const total = bytes.reduce((sum, each) => sum + each, 0);
    say(`A usual evening of five parts, ${sound}: ${bytes.join(' + ')} = ${total} bytes`);
  }
  say();
}
