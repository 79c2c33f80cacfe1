import { getClass, listChildren, localTimeAt, type TeacherScope } from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { childDrawing } from '../digest/child-drawing.ts';
import { type Reported, reportPapers } from '../digest/child-reports.ts';
import { readIn } from '../language/index.ts';
import { childFactsScreen, childPageScreen } from '../screens/child-page-screens.ts';
import { CHILDREN_A_PAGE } from '../screens/now-screens.ts';
import { pictureOf } from '../screens/pictures.ts';
import { PAPER_CHOICE } from '../screens/print-screens.ts';
import {
  childReportScreen,
  classReportsScreen,
  type ReportChoice,
} from '../screens/report-screens.ts';
import { childPictureSent, noChildPicture } from '../texts/child-picture.ts';
import { staleButton } from '../texts/errors.ts';
import { noReport, REPORT_SPANS, reportSent } from '../texts/report.ts';
import { readChild, readChildPage, workbooksOf } from './read-child.ts';
import { sendPaper } from './send-paper.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** One child's page, what can be made of it, and reports; for the class's teachers only. */
export const childPageTaps: TapHandlers<
  | 'childPage'
  | 'childPicture'
  | 'childFacts'
  | 'childReport'
  | 'makeReport'
  | 'classReports'
  | 'makeReports'
> = {
  childPage: (tap, { classId, number }) =>
    turn(tap, classId, async (scope) => {
      const input = await readChildPage(tap.deps, scope, number);
      const children = await listChildren(tap.deps.store, scope);
      const place = children.findIndex((child) => child.number === number);
      const listPage = Math.floor(place / CHILDREN_A_PAGE);
      return childPageScreen({ classId, number }, input, listPage);
    }),
  childPicture: async (tap, { classId, number }) => {
    const { deps, userId } = tap;
    const scope = await teacherScope(deps.store, userId, classId);
    const { child, report } = await readChild(deps, scope, number);
    const drawing = childDrawing(child, report);
    if (!drawing) return tap.answer(noChildPicture(), 'alert');
    await tap.answer();
    const picture = pictureOf(deps.painter, drawing);
    await sendScreen(deps, userId, { text: childPictureSent(child), picture, buttons: [] });
  },
  childFacts: (tap, { classId, number }) =>
    turn(tap, classId, async (scope) => {
      const { child, report } = await readChild(tap.deps, scope, number);
      return childFactsScreen({ classId, number }, child, report.practise);
    }),
  childReport: (tap, { classId, number, span, paper }) =>
    turn(tap, classId, async (scope) => {
      const { title } = await getClass(tap.deps.store, scope);
      const { child } = await readChild(tap.deps, scope, number);
      return childReportScreen(title, { classId, number }, child.nickname, { span, paper });
    }),
  makeReport: (tap, { classId, number, ...chosen }) => make(tap, classId, chosen, [number]),
  classReports: (tap, { classId, span, paper }) =>
    turn(tap, classId, async (scope) =>
      classReportsScreen(await getClass(tap.deps.store, scope), { span, paper }),
    ),
  makeReports: (tap, { classId, ...chosen }) => make(tap, classId, chosen, null),
};

/** Makes the reports on some children, by their numbers, or on all, and sends them as one document. */
async function make(
  tap: Tap,
  classId: string,
  { span, paper }: ReportChoice,
  numbers: readonly number[] | null,
): Promise<void> {
  const { deps, userId } = tap;
  const scope = await teacherScope(deps.store, userId, classId);
  const schoolClass = await getClass(deps.store, scope);
  const [covered, size] = [REPORT_SPANS[span], PAPER_CHOICE[paper]];
  if (!covered || !size) return tap.answer(staleButton(), 'alert');
  const wanted = numbers ?? (await listChildren(deps.store, scope)).map(({ number }) => number);
  const [first] = wanted;
  if (first === undefined) return tap.answer(noReport(), 'alert');
  const { day: today } = localTimeAt(deps.clock.now(), schoolClass.zone);
  // A report goes home or to a meeting, so it is in the class's language, not in the teacher's.
  const pages = await readIn(schoolClass.language, async () => {
    const reported = await readReports(deps, scope, { wanted, weeks: covered.weeks });
    return reportPapers(reported, { title: schoolClass.title, today, paper: size });
  });
  await tap.answer();
  const order = { schoolClass, paper: size, today };
  const what = wanted.length === 1 ? `report-${first}` : 'reports';
  await sendPaper(deps, userId, order, { what, pages, say: reportSent(wanted.length) });
}

async function readReports(
  deps: BotDeps,
  scope: TeacherScope,
  { wanted, weeks }: { wanted: readonly number[]; weeks: number | null },
): Promise<Reported[]> {
  const workbooks = await workbooksOf(deps, scope);
  const reported: Reported[] = [];
  for (const number of wanted) {
    const { child, report } = await readChild(deps, scope, number, weeks);
    reported.push({ child, report, workbook: workbooks.get(child.id) ?? null });
  }
  return reported;
}
