import type { ChildWeek, EveningRecord, WeekInput } from './week.ts';

/** One child's evenings that carry marks. Missing is missing, never zero: any other evening says nothing about the child. */
export function practisedEvenings(
  child: ChildWeek,
  days: WeekInput['days'],
): readonly EveningRecord[] {
  return child.evenings.filter(({ day, status }) => status === 'practised' && days.includes(day));
}
