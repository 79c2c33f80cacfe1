import type { InputFile } from 'grammy';
import { getPlans } from '../../db/index.ts';
import { proposePlan, type WeekSummary } from '../../drills/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { mapFile, pictureFile, tableFile, trendFile } from '../digest/digest-files.ts';
import { digestPages } from '../digest/digest-pages.ts';
import { readerLanguage } from '../language/index.ts';
import {
  digestScreen,
  familiesScreen,
  strandsScreen,
  wobblesScreen,
} from '../screens/digest-screens.ts';
import { PAPER_CHOICE } from '../screens/print-screens.ts';
import { noDigestFile, noPicture } from '../texts/digest-files.ts';
import { digestPrinted } from '../texts/digest-page.ts';
import { staleButton } from '../texts/errors.ts';
import { type DigestRead, digestFor } from './digest-source.ts';
import { sendPaper } from './send-paper.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** What is behind a digest: its details turn its own message, its files are sent. */
export const digestTaps: TapHandlers<
  'digestOf' | 'digestFacts' | 'digestStrands' | 'digestFamilies' | 'digestFile' | 'digestPaper'
> = {
  digestOf: (tap, { kind: _, ...of }) =>
    turn(tap, of.classId, async (scope) => {
      const { schoolClass, summary } = await digestFor(tap.deps, scope, of.day);
      return digestScreen(of, schoolClass.title, summary);
    }),
  digestFacts: (tap, { kind: _, ...of }) =>
    turn(tap, of.classId, async (scope) =>
      wobblesScreen(of, (await digestFor(tap.deps, scope, of.day)).summary),
    ),
  digestStrands: (tap, { kind: _, ...of }) =>
    turn(tap, of.classId, async (scope) =>
      strandsScreen(of, (await digestFor(tap.deps, scope, of.day)).summary),
    ),
  digestFamilies: (tap, { classId, day, page }) =>
    turn(tap, classId, async (scope) =>
      familiesScreen({ classId, day }, (await digestFor(tap.deps, scope, day)).summary, page),
    ),
  digestFile: async (tap, { classId, day, what }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    const read = await digestFor(tap.deps, scope, day);
    const file = fileOrWhy(tap, read, what);
    if (typeof file === 'string') return tap.answer(file, 'alert');
    await tap.answer();
    await sendFile(tap, file);
  },
  digestPaper: async (tap, { classId, day, paper }) => {
    const { store } = tap.deps;
    const scope = await teacherScope(store, tap.userId, classId);
    const size = PAPER_CHOICE[paper];
    if (!size) return tap.answer(staleButton(), 'alert');
    const { schoolClass, summary, day: last } = await digestFor(tap.deps, scope, day);
    if (isEmpty(summary)) return tap.answer(noDigestFile(), 'alert');
    const { active } = await getPlans(store, scope);
    await tap.answer();
    const steps = active && proposePlan(active.plan, summary).steps;
    const pages = digestPages({ title: schoolClass.title, summary, steps, paper: size });
    const order = { schoolClass, paper: size, today: last };
    const say = digestPrinted();
    const language = readerLanguage();
    await sendPaper(tap.deps, tap.userId, order, { what: 'digest', pages, say, language });
  },
};

function isEmpty({ children, days }: WeekSummary): boolean {
  return children.length === 0 || days.length === 0;
}

/** A picture that cannot be drawn is left out; the words and the table say the same. */
function fileOrWhy(tap: Tap, read: DigestRead, what: string): InputFile | string {
  try {
    return fileOf(tap, read, what);
  } catch {
    tap.deps.log.warn({ classId: read.schoolClass.id }, 'digest_picture_failed');
    return noPicture();
  }
}

/** The file a button asks for, or why there is none. */
function fileOf(tap: Tap, read: DigestRead, what: string): InputFile | string {
  const { schoolClass, day, summary } = read;
  const { painter } = tap.deps;
  if (isEmpty(summary)) return noDigestFile();
  switch (what) {
    case 'table':
      return tableFile(schoolClass, day, summary);
    case 'picture':
      return pictureFile(painter, schoolClass, day, summary);
    case 'map':
      return mapFile(painter, schoolClass, day, summary) ?? noDigestFile();
    case 'trend':
      return trendFile(painter, schoolClass, day, summary) ?? noDigestFile();
    default:
      return staleButton();
  }
}

/** When no answer comes the file may have arrived: that is logged, and the tap is not handled again. */
async function sendFile(tap: Tap, file: InputFile): Promise<void> {
  try {
    await tap.deps.api.sendDocument(tap.userId, file);
  } catch (error) {
    const { kind } = apiProblem(error);
    if (kind !== 'unknown') throw error;
    tap.deps.log.warn({ problem: kind }, 'reply_lost');
  }
}
