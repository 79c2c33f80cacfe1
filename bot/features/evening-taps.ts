import {
  AppError,
  CLASS_LIMITS,
  closePart,
  declineEvening,
  type EveningView,
  findHelperByChat,
  getEvening,
  getWay,
  type HelperScope,
  localTimeAt,
  noteSeen,
  openMarking,
  recordPages,
  remindLater,
  startEvening,
  storedTime,
  toggleMissed,
} from '../../db/index.ts';
import { minutesOf, timeOfDayFrom } from '../../drills/index.ts';
import { eveningScreen, fixScreen, pagesScreen } from '../screens/evening-screen.ts';
import { errorText } from '../texts/errors.ts';
import { tooLateToRemind } from '../texts/family.ts';
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
};

type Change = (scope: HelperScope, now: Date) => Promise<void>;

interface Follow {
  /** Which other messages about this evening are brought up to date: all of them, or those in the same chat. */
  readonly tell?: 'all' | 'own';
  /** A screen other than where the evening stands. */
  readonly screen?: (view: EveningView) => ReturnType<typeof fixScreen>;
}

const nothing: Change = async () => {};

/**
 * Makes a change, then shows where the evening stands: whatever the tap was, the screen after it is the truth. A day that is
 * over answers so and shows its results.
 */
async function act(
  tap: Tap,
  eveningId: string,
  change: Change,
  follow: Follow = {},
): Promise<void> {
  const { deps } = tap;
  const now = deps.clock.now();
  const scope = await scopeOf(tap, eveningId);
  const before = await getEvening(deps.store, scope);
  await noteSeen(deps.store, { eveningId, ...tap.place, now });
  const expired = await isExpired(() => change(scope, now));
  await tap.answer(expired ? errorText(expired) : undefined, 'alert');
  const view = await getEvening(deps.store, scope);
  const { day } = localTimeAt(now, view.zone);
  const special = view.day === day ? follow.screen : undefined;
  const way = await getWay(deps.store, scope.helperId);
  await tap.show(special ? special(view) : eveningScreen(view, day, { ...deps, way }));
  const tell = before.declined === view.declined ? follow.tell : 'all';
  if (tell) await syncCopies(deps, view, day, tap.place, tell);
}

/** Who taps. Somebody who is no helper at all gets the same answer as a helper of another child. */
async function scopeOf(tap: Tap, eveningId: string): Promise<HelperScope> {
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
    return tap.answer(tooLateToRemind(time, timeOfDayFrom(latest)), 'alert');
  }
  const at = new Date(now.getTime() + LATER_MINUTES * 60_000);
  await act(tap, evening, (own) => remindLater(deps.store, own, { at, now }));
}
