import {
  claimPicture,
  countPractised,
  type EveningView,
  getDisplay,
  localTimeAt,
  monthToShow,
  type Practised,
  problemOf,
  readOwnMonth,
} from '../../db/index.ts';
import { reportChild, reportMonth } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { childDrawing } from '../digest/child-drawing.ts';
import { eveningStep } from '../screens/evening-step.ts';
import { pictureOf } from '../screens/pictures.ts';
import type { Screen } from '../screens/screen.ts';
import { monthInWords, monthMessage } from '../texts/months.ts';
import { lines } from '../texts/words.ts';
import type { Tap } from './tap.ts';

/** How many evenings a child practised, for the screen that ends one; undefined on any other. */
export async function practisedBy(
  { store, clock }: BotDeps,
  helperId: string,
  view: EveningView,
): Promise<Practised | undefined> {
  const now = clock.now();
  if (!isOver(view, now)) return undefined;
  return countPractised(store, { helperId, childId: view.childId, now });
}

/**
 * What follows the tap that ended an evening: with the last one of a month, a look back on it. It answers the family's own tap
 * and never comes by itself. Whatever goes wrong with it, the evening is stored and shown.
 */
export async function afterEvening(
  { deps, userId }: Tap,
  { helperId, before, view }: { helperId: string; before: EveningView; view: EveningView },
): Promise<void> {
  const now = deps.clock.now();
  if (!isOver(view, now) || isOver(before, now)) return;
  try {
    const screen = await monthScreen(deps, { helperId, childId: view.childId, now });
    if (screen) await sendScreen(deps, userId, screen);
  } catch (error) {
    deps.log.warn({ eveningId: view.id, problem: problemOf(error) }, 'month_not_shown');
  }
}

function isOver(view: EveningView, now: Date): boolean {
  return eveningStep(view, localTimeAt(now, view.zone).day).step === 'result';
}

/** The month that this evening closes, once; null on other days, when it was shown, and for who does not want it. */
async function monthScreen(
  deps: BotDeps,
  scope: { helperId: string; childId: string; now: Date },
): Promise<Screen | null> {
  const { store, painter } = deps;
  const { monthly, way } = await getDisplay(store, scope.helperId);
  const month = monthly ? await monthToShow(store, scope) : null;
  if (!month) return null;
  const { child, past, before } = await readOwnMonth(store, { ...scope, month });
  const report = reportMonth(past, { month, before });
  if (report.practised === 0) return null;
  if (!(await claimPicture(store, { ...scope, day: month.first }))) return null;
  const text = monthMessage(child.nickname, month.first, report);
  const whole = reportChild(past);
  const words = monthInWords(whole);
  const drawing = way === 'words' ? null : childDrawing(child, whole);
  if (!drawing) return { text: lines(text, words), buttons: [] };
  return { text, picture: pictureOf(painter, drawing), words, buttons: [] };
}
