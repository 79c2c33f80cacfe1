import { writeFile } from 'node:fs/promises';
import {
  AppError,
  type ChildRecord,
  type ClassExport,
  exportClass,
  type OpenStore,
  readChildRecord,
} from '../../../db/index.ts';
import { OperatorError, UsageError } from '../../roots/failure.ts';
import { type AddCommand, type Asked, type Cli, idOf, reporting } from '../cli.ts';
import { withProgress } from '../progress.ts';
import { withStore } from '../store.ts';

interface Options {
  readonly child?: string;
  readonly class?: string;
  readonly to?: string;
}

const LOOK = 'Look it up with: suppersums move-class';
const PRIVATE = { flag: 'wx', mode: 0o600 } as const;

/** Gives out everything of one child or of one class as JSON: to a file that only its owner can read, or to the output. */
export const addExport: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('export')
    .description('give out everything that is kept about one child, or about one class, as JSON')
    .option('--child <id>', 'one child, with its evenings, marks and helpers')
    .option('--class <id>', 'one class: settings, plan, books, breaks, and all about each child')
    .option('--to <file>', 'write to this new file in place of the output');
  reporting<Options>(command, bench, async (_, options) => {
    const read = wanted(cli, options);
    const data = await withStore(cli, read);
    const { to } = options;
    const text = JSON.stringify(data, null, 2);
    if (to === undefined) return { text, data };
    await writeNew(to, `${text}\n`);
    return {
      text: `It is in ${to}. It holds children’s data: keep it where nobody else reads it, and delete it when it has served.`,
      data: { file: to, format: data.format },
    };
  });
};

type Read = (store: OpenStore) => Promise<ChildRecord | ClassExport>;

function wanted(cli: Cli, { child, class: classId, json }: Options & Asked): Read {
  if ((child === undefined) === (classId === undefined)) {
    throw new UsageError('Say what to export: --child <id> or --class <id>, one of the two.');
  }
  const now = cli.now();
  if (child !== undefined) {
    const childId = idOf(child, 'a child', 'It stands in the export of its class.');
    return (store) => readChildRecord(store, { childId, now }).catch(unknown('child'));
  }
  const id = idOf(classId, 'a class', LOOK);
  return (store) =>
    withProgress(cli, { json, what: 'children' }, (done) =>
      exportClass(store, { classId: id, now }, done),
    ).catch(unknown('class'));
}

function unknown(what: 'child' | 'class') {
  return (error: unknown): never => {
    if (!(error instanceof AppError)) throw error;
    throw new OperatorError(`There is no ${what} with this id. ${LOOK}`);
  };
}

async function writeNew(file: string, text: string): Promise<void> {
  try {
    await writeFile(file, text, PRIVATE);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') {
      throw new OperatorError(`There is a file ${file} already. Give another name.`);
    }
    throw new OperatorError(
      `Cannot write ${file}. Does its folder exist, and may you write there?`,
    );
  }
}
