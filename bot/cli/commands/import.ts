import {
  AppError,
  CLASS_LIMITS,
  type ClassFile,
  importClass,
  listTeacherAccounts,
  type OpenStore,
  REHEARSAL_BOT,
} from '../../../db/index.ts';
import type { Config } from '../../roots/config.ts';
import { OperatorError, UsageError } from '../../roots/failure.ts';
import { readClassFile } from '../class-file.ts';
import { type AddCommand, idOf, type Outcome, reporting } from '../cli.ts';
import { withStore } from '../store.ts';

interface Options {
  readonly teacher?: string;
}

const NOT_TAKEN =
  'Not taken: families (each agrees and joins anew: print slips), evenings and marks, the term, greetings, children’s own books and settings. To move everything, use backup and restore, or move.';

/** Makes a new class from a file. */
export const addImport: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('import')
    .description(
      'make a new class from a file: settings, children, plan, books and breaks; no families',
    )
    .argument('<file>', 'what “suppersums export --class” wrote, or a file like it')
    .option('--teacher <id>', 'whose class it is; may be left out while there is one teacher only');
  reporting<Options>(command, bench, async ([file = ''], { teacher }) => {
    const wanted = teacher === undefined ? null : idOf(teacher, 'a teacher', WHO);
    const read = await readClassFile(file);
    return withStore(cli, async (store, { config }) => {
      const teacherId = await teacherOf(store, wanted);
      return make(store, { file: read, teacherId, botId: botOf(config), now: cli.now() });
    });
  });
};

const WHO = 'Leave --teacher out to see them all.';

async function teacherOf(store: OpenStore, wanted: string | null): Promise<string> {
  const accounts = await listTeacherAccounts(store);
  const [only, another] = accounts;
  if (!only) {
    throw new OperatorError('There is no teacher yet. First: suppersums invite-teacher');
  }
  if (wanted !== null) {
    if (accounts.some(({ teacherId }) => teacherId === wanted)) return wanted;
    throw new OperatorError(`There is no teacher ${wanted}. ${WHO}`);
  }
  if (!another) return only.teacherId;
  const lines = accounts.map(
    ({ teacherId, since, classes }) =>
      `${teacherId}  since ${since.toISOString().slice(0, 10)}  ${classes.join(', ') || 'no class yet'}`,
  );
  throw new UsageError(`Say whose class it is with --teacher <id>:\n${lines.join('\n')}`);
}

/** A class belongs to the first bot of BOT_TOKEN; move-class changes that. */
function botOf(config: Config): number {
  const [token] = config.mode === 'live' ? config.tokens : [];
  return token === undefined ? REHEARSAL_BOT : Number(token.split(':')[0]);
}

async function make(
  store: OpenStore,
  wanted: { file: ClassFile; teacherId: string; botId: number; now: Date },
): Promise<Outcome> {
  const made = await importClass(store, wanted).catch((error) => {
    if (!(error instanceof AppError)) throw error;
    throw new OperatorError(`The class cannot be made; nothing was changed. ${remedy(error.what)}`);
  });
  const { classId, children, books, breaks, hasPlan } = made;
  const plan = hasPlan ? 'its plan in use' : 'no plan yet: the teacher makes one';
  return {
    text: `Class ${classId} is made: ${children} children, ${books} workbooks, ${breaks} breaks, ${plan}. The teacher finds it with /class.\n${NOT_TAKEN}`,
    data: made,
  };
}

/** What to mend in the file, by what was refused. */
function remedy(what: string): string {
  const { eveningFrom, eveningTo, nudgeGapMinutes, nudgeTo, titleLength } = CLASS_LIMITS;
  const known: Readonly<Record<string, string>> = {
    title: `class.title has 1 to ${titleLength} characters.`,
    zone: 'class.zone is a name like Europe/London or Africa/Johannesburg.',
    weekdays: 'class.weekdays has at least one day, 1 for Monday to 7 for Sunday.',
    'evening time': `class.eveningTime is from ${eveningFrom} to ${eveningTo}.`,
    'nudge time': `class.nudgeTime is ${nudgeTo} at the latest.`,
    'nudge too early': `class.nudgeTime is at least ${nudgeGapMinutes} minutes after class.eveningTime.`,
    grade: 'class.grade is a grade of class.curriculum, or null.',
    country: 'class.country is a code of ISO 3166 like ZA or GB-SCT, or null.',
    'sibling age': 'class.siblingAge is one of 8, 10, 11, 12, 13, 14, 16, 18, or null.',
    'week plan': 'plan has a part that this release does not know, or too many, or too few cards.',
    'number of children': 'children has more than a class can hold.',
  };
  return known[what] ?? `Mend its ${what}.`;
}
