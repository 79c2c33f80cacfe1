import type { FamilyChild, OpenSlip } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { quote } from './quote.ts';
import { bold, lines, listOf, name, type Text, weekdayRange } from './words.ts';

/**
 * Version of the notice below, kept with each agreement beside the language it was read in. One for all languages: change it
 * whenever the words change in any of them.
 */
export const NOTICE_VERSION = '2026-11-25.4';

/** What a helper reads before anything is stored. */
export function notice(slip: OpenSlip): Text {
  return lines(
    bold(
      say('family-notice-heading', { child: name(slip.nickname), class: name(slip.classTitle) }),
    ),
    say('family-notice-what'),
    '',
    bold(say('family-notice-kept')),
    say('family-notice-kept-what'),
    bold(say('family-notice-seen')),
    say('family-notice-seen-by'),
    bold(say('family-notice-long')),
    say('family-notice-how-long'),
    bold(say('family-notice-choice')),
    say('family-notice-commands'),
    '',
    say('family-notice-snapshot'),
  );
}

/** After "No, thank you". */
export function disagreed(): Text {
  return lines(say('family-disagreed'));
}

/** After agreeing. */
export function joined(slip: OpenSlip, child: FamilyChild | undefined): Text {
  return lines(
    bold(say('family-joined', { child: name(slip.nickname) })),
    child ? say('family-when', whenItComes(child)) : null,
    say('family-how-to-go-on'),
  );
}

function whenItComes({ schoolClass, eveningTime }: FamilyChild): { days: string; time: string } {
  return { days: weekdayRange(schoolClass.weekdays), time: eveningTime };
}

/** For somebody we do not know. `teachers` says whether anybody may become one, or only who is invited. */
export function stranger(teachers: 'invite' | 'open' = 'invite'): Text {
  return lines(
    bold(say('family-hello')),
    say('family-what-this-is'),
    say('family-for-helpers'),
    say(teachers === 'open' ? 'family-teachers-teach' : 'family-teachers-ask'),
  );
}

/** When "/today" finds nothing. */
export function nothingToday(child: FamilyChild): Text {
  return lines(say('family-nothing-today', { child: name(child.nickname), ...whenItComes(child) }));
}

/** For the helper of children who are off their class's list, or whose class has ended. Why is the school's to say. */
export function practiceStopped(nicknames: readonly string[]): Text {
  return lines(say('family-practice-stopped', { children: listOf(nicknames.map(name)) }));
}

/** After "/time 18:15". */
export function timeSet(time: string): Text {
  return lines(say('family-time-set', { time }));
}

/** "/time" without a usable time. */
export function badTime(value: string, from: string, to: string): Text {
  return lines(
    value === '' ? say('family-time-missing') : say('family-time-bad', { typed: quote(value) }),
    say('family-time-how', { from, to }),
  );
}

/** For "Later" when half an hour later would be too late; both are times of day. */
export function tooLateToRemind(now: string, latest: string): string {
  return say('family-too-late', { now, latest });
}

/** Before leaving. */
export function askToLeave(children: readonly Pick<FamilyChild, 'nickname'>[]): Text {
  const names = listOf(children.map((child) => name(child.nickname)));
  return lines(
    bold(say('family-ask-to-leave', { children: names })),
    say('family-leaving-means'),
    say('family-leaving-keeps'),
  );
}

/** After leaving. */
export function left(): Text {
  return lines(say('family-left'));
}

/** After deciding to stay. */
export function staying(): Text {
  return lines(say('family-staying'));
}

/** For a teacher who sends a helper's command and helps no child. */
export function teacherHelpsNobody(): Text {
  return lines(say('family-helps-nobody'));
}
