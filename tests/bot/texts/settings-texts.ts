import * as joining from '../../../bot/texts/joining.ts';
import * as months from '../../../bot/texts/months.ts';
import * as settings from '../../../bot/texts/settings.ts';
import * as sharing from '../../../bot/texts/sharing.ts';
import { lines } from '../../../bot/texts/words.ts';
import {
  DISPLAY_SWITCHES,
  type Display,
  RELATIONS,
  type Sharing,
  storedDay,
  type Tie,
} from '../../../db/index.ts';
import { RUNGS, reportChild } from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const since = storedDay('2026-09-02');
const COUNTS = [0, 1, 17].flatMap((evenings) => [
  { evenings, since: null },
  { evenings, since },
]);
const OFF: Display = {
  ...{ way: 'clip', bigger: false, noTiming: false },
  ...{ quiet: false, clockAid: false, monthly: false },
};
const ON: Display = {
  ...{ way: 'words', bigger: true, noTiming: true },
  ...{ quiet: true, clockAid: true, monthly: true },
};

/** The texts of a family's choices, and the modules they are in. */
export const SETTINGS_MODULES = [joining, settings, sharing, months];

/** All of them, about a child called as given. */
export function settingsTexts(nickname: string) {
  const tie: Tie = {
    ...{ childId: 'c', nickname, number: 3, relation: null, helpers: 1, siblingAge: 12 },
    ...{ eveningTime: kingfisher.eveningTime, schoolClass: kingfisher },
  };
  return { ...joiningTexts(tie), ...setTexts(tie), ...sharingTexts(tie), ...monthTexts(nickname) };
}

function joiningTexts(tie: Tie) {
  const { nickname } = tie;
  return {
    askRelation: [joining.askRelation(tie)],
    relationLabel: RELATIONS.map((relation) => joining.relationLabel(relation, 12)),
    ratherNot: [joining.ratherNot()],
    keepIt: [joining.keepIt()],
    askTime: [joining.askTime('17:30')],
    allSet: [joining.allSet(tie)],
    askWhomToLeave: [joining.askWhomToLeave([nickname, 'Robin'])],
    leaveLabel: [joining.leaveLabel(nickname)],
    leaveAllLabel: [joining.leaveAllLabel()],
    leftOne: [joining.leftOne(nickname, []), joining.leftOne(nickname, ['Robin', 'Otter'])],
  };
}

function setTexts(tie: Tie) {
  const { weekdays } = kingfisher;
  const child = { tie, practised: { evenings: 17, since: null }, days: weekdays, stand: null };
  const paused = { ...child, stand: { kind: 'paused', until: storedDay('2026-10-05') } as const };
  return {
    familySettings: [
      settings.familySettings([child], 0),
      settings.familySettings([paused, child], 99_999),
      settings.familySettings([child, child, child, child, child], 1_234_567),
      settings.familySettings([child, child, child, child, child, child], 1e9),
    ],
    amountOf: [0, 1, 99_999, 100_000, 1_234_567].map(settings.amountOf),
    timeLabel: [settings.timeLabel('17:30')],
    waySettingLabel: [settings.waySettingLabel()],
    daysLabel: [settings.daysLabel()],
    pauseLabel: [settings.pauseLabel()],
    settingsLabel: [settings.settingsLabel()],
    switchLabel: DISPLAY_SWITCHES.map(settings.switchLabel),
    switched: DISPLAY_SWITCHES.flatMap((which) => [
      settings.switched(which, ON),
      settings.switched(which, OFF),
    ]),
    askSiblingAge: [settings.askSiblingAge(12)],
    siblingAgeLabel: [settings.siblingAgeLabel()],
  };
}

function sharingTexts(tie: Tie) {
  const { nickname } = tie;
  const found: Sharing = { ...tie, refusal: null, openUntil: null, was: 'none' };
  return {
    askToShare: [
      sharing.askToShare(found, null),
      sharing.askToShare({ ...found, helpers: 3 }, 'Fri 27 Nov, 18:05'),
      sharing.askToShare({ ...found, refusal: 'sibling' }, null),
      sharing.askToShare({ ...found, refusal: 'helpers' }, null),
      sharing.askToShare({ ...found, refusal: 'week' }, null),
    ],
    askWhomToShare: [sharing.askWhomToShare([nickname, 'Robin'])],
    shared: [sharing.shared(nickname, 'https://t.me/harbour?start=AAAA', 'Fri 27 Nov, 18:05')],
    makeShareLabel: [sharing.makeShareLabel()],
  };
}

function monthTexts(nickname: string) {
  const steps = RUNGS.slice(0, 6).map(({ id }) => id);
  const past = {
    days: [since],
    evenings: [
      {
        day: since,
        status: 'practised',
        parts: [{ strand: 'doubles', rung: 'doubles.to5', right: 4, asked: 5 }],
        pages: null,
      } as const,
    ],
    memory: new Map(),
    today: since,
  };
  return {
    practisedLine: COUNTS.map(months.practisedLine),
    withPractised: [
      months.withPractised(lines('Wren'), undefined),
      months.withPractised(lines('Wren'), { evenings: 3, since }),
      months.withPractised(lines(...Array.from({ length: 9 }, () => 'a')), { evenings: 3, since }),
    ],
    monthMessage: [
      months.monthMessage(nickname, since, { practised: 1, secure: [] }),
      months.monthMessage(nickname, since, { practised: 17, secure: steps }),
    ],
    monthInWords: [months.monthInWords(reportChild(past))],
  };
}
