import type { Display, DisplaySwitch, Practised, Tie } from '../../db/index.ts';
import type { PaceStand, Weekday } from '../../drills/index.ts';
import { localeOf, readerLanguage, say } from '../language/index.ts';
import { paceWords } from './fewer.ts';
import { practisedLine } from './months.ts';
import { bold, lines, name, type Text, weekdayRange } from './words.ts';

/** Children with a line of their own; a helper of more sees how many others there are. */
const MOST_CHILDREN = 4;

/** One child on the family's settings. */
export interface SettingsChild {
  readonly tie: Pick<Tie, 'nickname' | 'eveningTime' | 'schoolClass'>;
  readonly practised: Practised;
  /** The weekdays on which the drill comes, and why it comes less often for now, if it does. */
  readonly days: readonly Weekday[];
  readonly stand: PaceStand | null;
}

/** A family's settings at a glance. `bytes` is about how much was sent to this helper this month. */
export function familySettings(children: readonly SettingsChild[], bytes: number): Text {
  const more = children.length - MOST_CHILDREN;
  return lines(
    bold(say('settings-title')),
    ...children.slice(0, MOST_CHILDREN).map(childLine),
    more > 0 ? say('settings-more-children', { count: more }) : null,
    say('settings-data', { amount: amountOf(bytes) }),
    say('settings-scope'),
    say('settings-commands'),
  );
}

function childLine({ tie, practised, days, stand }: SettingsChild): string {
  const about = { name: name(tie.nickname), practised: practisedLine(practised) };
  // Chosen days, and a teacher's word that it stays daily, are told by the days themselves.
  const isLess = stand !== null && stand.kind !== 'days' && stand.kind !== 'kept';
  return isLess
    ? say('settings-child-pace', { ...about, pace: paceWords(stand) })
    : say('settings-child', { ...about, days: weekdayRange(days), time: tie.eveningTime });
}

/**
 * An amount of data as people say it, rounded: kilobytes of a thousand bytes below a tenth of a megabyte.
 *
 * @example
 * amountOf(1_234_567); // '1.2 MB'
 */
export function amountOf(bytes: number): string {
  const write = (amount: number) =>
    new Intl.NumberFormat(localeOf(readerLanguage()), { maximumFractionDigits: 1 }).format(amount);
  if (bytes < 100_000) return say('settings-kilobytes', { amount: write(Math.ceil(bytes / 1000)) });
  return say('settings-megabytes', { amount: write(bytes / 1_000_000) });
}

/** The button of the family's evening time. */
export function timeLabel(time: string): string {
  return say('settings-time', { time });
}

/** The button of the way in which cards are shown. */
export function waySettingLabel(): string {
  return say('settings-way');
}

/** The buttons that lead to the days on which the drill comes, and to a pause. */
export function daysLabel(): string {
  return say('settings-days');
}

/** See {@link daysLabel}. */
export function pauseLabel(): string {
  return say('settings-pause');
}

/** The button that leads back to the settings. */
export function settingsLabel(): string {
  return say('settings-back');
}

/** What the button of a switch says. */
export function switchLabel(which: DisplaySwitch): string {
  return say(`settings-switch-${which}`);
}

/** The line that answers a switch: what is different from now on. */
export function switched(which: DisplaySwitch, display: Display): string {
  return display[which] ? say(`settings-on-${which}`) : say(`settings-off-${which}`);
}

/** Choosing from which age on a brother or sister may help, for the class's teacher. */
export function askSiblingAge(age: number): Text {
  return lines(bold(say('settings-sibling-ask')), say('settings-sibling-now', { age }));
}

/** The button of that age on the class's settings. */
export function siblingAgeLabel(): string {
  return say('settings-sibling');
}
