import {
  AppError,
  CLASS_LIMITS,
  closePart,
  declineEvening,
  type EveningView,
  findHelperByChat,
  getDisplay,
  getEvening,
  type HelperScope,
  listTurns,
  localTimeAt,
  noteSeen,
  openMarking,
  recordPages,
  remindLater,
  startEvening,
  stopEvening,
  storedTime,
  toggleMissed,
} from '../../db/index.ts';
import { minutesOf, timeOfDayFrom } from '../../drills/index.ts';
import { eveningScreen, fixScreen, pagesScreen } from '../screens/evening-screen.ts';
import { nextTurn } from '../screens/turns.ts';
import { errorText } from '../texts/errors.ts';
import { tooLateToRemind } from '../texts/family.ts';
import { about } from '../texts/turns.ts';
import { afterEvening, practisedBy } from './after-evening.ts';
import { syncCopies } from './sync-copies.ts';
import type { Tap, TapHandlers } from './tap.ts';

const LATER_MINUTES = 30;

/** Everything a helper can tap on an evening. */
export const eveningTaps: TapHandlers<
  | 'start'
  | 'later'
  | 'notToday'
  | 'allRight'
  | 'mark'
  | 'toggle'
  | 'done'
  | 'said'
  | 'pages'
  | 'fix'
  | 'fixPages'
  | 'stopToday'
> = {
  start: (tap, { evening }) =>
    act(tap, evening, (scope, now) => startEvening(tap.deps.store, scope, now), { tell: 'own' }),
  later: remindMeLater,
  notToday: (tap, { evening }) =>
    act(tap, evening, (scope, now) => declineEvening(tap.deps.store, scope, now), {
      tell: 'all',
    }),
  allRight: (tap, { evening, part }) =>
    act(
      tap,
      evening,
      (scope, now) =>
        closePart(tap.deps.store, scope, { part, verdict: { kind: 'all_right' }, now }),
      { tell: 'all' },
    ),
  mark: (tap, { evening, part }) =>
    act(tap, evening, (scope, now) => openMarking(tap.deps.store, scope, { part, now })),
  toggle: (tap, { evening, part, card, missed }) =>
    act(tap, evening, (scope, now) =>
      toggleMissed(tap.deps.store, scope, { part, card, wasMissed: missed === 1, now }),
    ),
  done: (tap, { evening, part }) =>
    act(
      tap,
      evening,
      (scope, now) => closePart(tap.deps.store, scope, { part, verdict: { kind: 'tapped' }, now }),
      { tell: 'all' },
    ),
  said: (tap, { evening, part, said }) =>
    act(
      tap,
      evening,
      (scope, now) =>
        closePart(tap.deps.store, scope, { part, verdict: { kind: 'said', said }, now }),
      { tell: 'all' },
    ),
  pages: (tap, { evening, pages }) =>
    act(tap, evening, (scope, now) => recordPages(tap.deps.store, scope, { pages, now }), {
      tell: 'all',
    }),
  fix: (tap, { evening }) => act(tap, evening, nothing, { screen: fixScreen }),
  fixPages: (tap, { evening }) => act(tap, evening, nothing, { screen: pagesScreen }),
  stopToday: (tap, { evening }) =>
    act(tap, evening, (scope, now) => stopEvening(tap.deps.store, scope, now), { tell: 'all' }),
};

/** One change of an evening. */
export type Change = (scope: HelperScope, now: Date) => Promise<void>;

interface Follow {
  /** Which other messages about this evening are brought up to date: all of them, or those in the same chat. */
  readonly tell?: 'all' | 'own';
  /** A screen other than where the evening stands. */
  readonly screen?: (view: EveningView) => ReturnType<typeof fixScreen>;
}

/** Changes nothing: a tap that only looks. */
export const nothing: Change = async () => {};

/**
 * Makes a change, then shows where the evening stands: whatever the tap was, the screen after it is the truth. A day that is
 * over answers so and shows its results. Whatever is answered in words names the child.
 */
export async function act(
  tap: Tap,
  eveningId: string,
  change: Change,
  follow: Follow = {},
): Promise<void> {
  const { deps } = tap;
  const now = deps.clock.now();
  const scope = await scopeOf(tap, eveningId);
  const before = await getEvening(deps.store, scope);
  await noteSeen(deps.store, { eveningId, botId: deps.botId, ...tap.place, now });
  const expired = await isExpired(() => change(scope, now));
  await tap.answer(expired ? about(before.nickname, errorText(expired)) : undefined, 'alert');
  const view = await getEvening(deps.store, scope);
  const { day } = localTimeAt(now, view.zone);
  const special = view.day === day ? follow.screen : undefined;
  const display = await getDisplay(deps.store, scope.helperId);
  const next = nextTurn(await listTurns(deps.store, scope), eveningId);
  const practised = await practisedBy(deps, scope.helperId, view);
  const means = { ...deps, ...display, next, practised };
  await tap.show(special ? special(view) : eveningScreen(view, day, means));
  const tell = isNews(before, view) ? 'all' : follow.tell;
  if (tell) await syncCopies(deps, view, day, tap.place, tell);
  await afterEvening(tap, { helperId: scope.helperId, before, view });
}

/** What the child's other helpers are told, whichever tap it came of: put off or not, stopped or not, a part begun or done. */
function isNews(before: EveningView, after: EveningView): boolean {
  const isBegun = before.marking === null && after.marking?.single !== undefined;
  const done = ({ results }: EveningView) => results.filter((result) => result !== null).length;
  return (
    isBegun ||
    before.declined !== after.declined ||
    before.stopped !== after.stopped ||
    done(before) !== done(after)
  );
}

/** Who taps. Somebody who is no helper at all gets the same answer as a helper of another child. */
export async function scopeOf(tap: Tap, eveningId: string): Promise<HelperScope> {
  const helper = await findHelperByChat(tap.deps.store, tap.userId);
  if (!helper) throw new AppError('not_found', 'evening');
  return { helperId: helper.id, eveningId };
}

async function isExpired(change: () => Promise<void>): Promise<AppError | null> {
  try {
    await change();
    return null;
  } catch (error) {
    if (error instanceof AppError && error.code === 'expired') return error;
    throw error;
  }
}

/** One reminder in half an hour, unless that would be too late in the evening. */
async function remindMeLater(tap: Tap, { evening }: { evening: string }): Promise<void> {
  const { deps } = tap;
  const now = deps.clock.now();
  const scope = await scopeOf(tap, evening);
  const view = await getEvening(deps.store, scope);
  const { day, time } = localTimeAt(now, view.zone);
  const latest = minutesOf(storedTime(CLASS_LIMITS.nudgeTo));
  const minutes = minutesOf(time) + LATER_MINUTES;
  if (view.day === day && minutes > latest) {
    return tap.answer(about(view.nickname, tooLateToRemind(time, timeOfDayFrom(latest))), 'alert');
  }
  const at = new Date(now.getTime() + LATER_MINUTES * 60_000);
  await act(tap, evening, (own) => remindLater(deps.store, own, { at, now }));
}
