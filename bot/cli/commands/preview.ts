import { AppError, leadScope, type OpenStore, WAYS } from '../../../db/index.ts';
import { LANGUAGES, type Language } from '../../../drills/index.ts';
import { readPreview } from '../../features/preview-taps.ts';
import { OperatorError } from '../../roots/failure.ts';
import type { Preview } from '../../screens/preview-screen.ts';
import { type AddCommand, type Cli, idOf, oneOf, reporting } from '../cli.ts';
import { demoPreview } from '../demo-preview.ts';
import { withProgress } from '../progress.ts';
import { siteOf, withStore } from '../store.ts';
import { useFolder } from '../use-folder.ts';
import { writePreview } from '../write-preview.ts';

interface Options {
  readonly class?: string;
  readonly language?: string;
  readonly way: string;
  readonly to: string;
}

const TONGUES = Object.keys(LANGUAGES).filter((tag): tag is Language => tag in LANGUAGES);

/** Draws a whole evening into a folder: every message a family would see, with its pictures and clips. */
export const addPreview: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('preview')
    .description('draw an evening into a folder: every message, with its pictures and clips')
    .option('--class <id>', 'the next evening of this class; without it, of the invented class')
    .option('--language <tag>', `cards and texts in one of ${TONGUES.join(', ')}`)
    .option('--way <way>', `how cards are shown: one of ${WAYS.join(', ')}`, 'pictures')
    .option('--to <folder>', 'where to; what such a run left there before is replaced', 'preview');
  reporting<Options>(command, bench, async (_, options) => {
    const { to, json } = options;
    const way = oneOf(options.way, WAYS, 'way');
    const tongue = options.language && oneOf(options.language, TONGUES, 'language we have');
    const { ffmpeg } = siteOf(cli).config;
    const preview = await previewOf(cli, options.class);
    const language = tongue || preview.schoolClass.language;
    await useFolder(to, ['evening.md', 'pictures']);
    const spoken = { ...preview, schoolClass: { ...preview.schoolClass, language } };
    const done = await withProgress(cli, { json, what: 'messages' }, (onMessage) =>
      writePreview(spoken, { folder: to, way, ffmpeg }, onMessage),
    );
    return {
      text: `An evening is in ${to}/evening.md: ${done.messages} messages, ${done.files} pictures or clips in ${to}/pictures.`,
      data: { folder: to, language, way, ...done },
    };
  });
};

async function previewOf(cli: Cli, wanted: string | undefined): Promise<Preview> {
  if (wanted === undefined) return demoPreview();
  const classId = idOf(wanted, 'a class', 'Look it up with: suppersums move-class');
  return withStore(cli, (store) => previewOfClass(store, cli, classId));
}

async function previewOfClass(store: OpenStore, cli: Cli, classId: string): Promise<Preview> {
  try {
    const preview = await readPreview({ store, clock: cli }, await leadScope(store, classId));
    if (preview.drill.parts.length > 0) return preview;
  } catch (error) {
    if (!(error instanceof AppError)) throw error;
    throw new OperatorError(
      `There is no running class ${classId}. Look it up with: suppersums move-class`,
    );
  }
  throw new OperatorError('The class has no week plan yet. Its teacher makes one with /class.');
}
