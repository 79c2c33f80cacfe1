import type { Action, ActionKind } from '../callback/actions.ts';
import { bookQuestions } from './book-questions.ts';
import { bookTaps } from './book-taps.ts';
import { breakTaps } from './break-taps.ts';
import { childPageTaps } from './child-page-taps.ts';
import { childrenTaps } from './children-taps.ts';
import { classFileTaps } from './class-file-taps.ts';
import { classTaps } from './class-taps.ts';
import { classesTaps } from './classes-taps.ts';
import { digestTaps } from './digest-taps.ts';
import { eveningTaps } from './evening-taps.ts';
import { fewerTaps } from './fewer-taps.ts';
import { firstPlanTaps } from './first-plan-taps.ts';
import { gradeTaps } from './grade-taps.ts';
import { greetingTaps } from './greeting-taps.ts';
import { holidayTaps } from './holiday-taps.ts';
import { joinTaps } from './join-taps.ts';
import { joiningTaps } from './joining-taps.ts';
import { languageTaps } from './language-taps.ts';
import { linkTaps } from './link-taps.ts';
import { mixTaps } from './mix-taps.ts';
import { nowTaps } from './now-taps.ts';
import { oneByOneTaps } from './one-by-one-taps.ts';
import { ownWayTaps } from './own-way-taps.ts';
import { paceTaps } from './pace-taps.ts';
import { planSourceTaps } from './plan-sources.ts';
import { planTaps } from './plan-taps.ts';
import { previewTaps } from './preview-taps.ts';
import { printTaps } from './print-taps.ts';
import { proposalTaps } from './proposal-taps.ts';
import { rightsTaps } from './rights-taps.ts';
import { settingsTaps } from './settings-taps.ts';
import { shareTaps } from './share-taps.ts';
import { siblingTaps } from './sibling-taps.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherTaps } from './teacher-taps.ts';
import { termTaps } from './term-taps.ts';
import { undoTaps } from './undo-taps.ts';
import { wayTaps } from './way-taps.ts';

/** Every action has its handler here; the compiler says so when one is missing. */
const handlers: TapHandlers<ActionKind> = {
  ...joinTaps,
  ...joiningTaps,
  ...settingsTaps,
  ...shareTaps,
  ...languageTaps,
  ...eveningTaps,
  ...oneByOneTaps,
  ...siblingTaps,
  ...classTaps,
  ...breakTaps,
  ...holidayTaps,
  ...teacherTaps,
  ...classesTaps,
  ...firstPlanTaps,
  ...childrenTaps,
  ...classFileTaps,
  ...linkTaps,
  ...planTaps,
  ...mixTaps,
  ...planSourceTaps,
  ...previewTaps,
  ...termTaps,
  ...printTaps,
  ...gradeTaps,
  ...greetingTaps,
  ...ownWayTaps,
  ...wayTaps,
  ...rightsTaps,
  ...paceTaps,
  ...fewerTaps,
  ...nowTaps,
  ...digestTaps,
  ...proposalTaps,
  ...childPageTaps,
  ...undoTaps,
  ...bookTaps,
  ...bookQuestions,
};

/** Hands a tap to its handler. */
export async function routeTap(tap: Tap, action: Action): Promise<void> {
  await handle(action.kind, tap, action);
}

function handle<K extends ActionKind>(
  kind: K,
  tap: Tap,
  action: Extract<Action, { kind: K }>,
): Promise<void> {
  return handlers[kind](tap, action);
}
