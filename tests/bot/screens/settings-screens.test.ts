import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import {
  allSetScreen,
  joinTimeScreen,
  joinWayScreen,
  leaveWhomScreen,
  relationScreen,
} from '../../../bot/screens/joining-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import {
  settingsScreen,
  sharedScreen,
  shareScreen,
  shareWhomScreen,
  siblingAgeScreen,
  timeSettingScreen,
  waySettingScreen,
} from '../../../bot/screens/settings-screens.ts';
import { joined } from '../../../bot/texts/family.ts';
import {
  type Display,
  RELATIONS,
  type Sharing,
  SIBLING_AGES,
  storedTime,
  type Tie,
} from '../../../db/index.ts';
import { LANGUAGES, type Language } from '../../../drills/index.ts';
import { family, kingfisher } from '../support/kingfisher.ts';

const CHILD = '019a0000-0000-7000-8000-0000000000d1';
const TAGS = Object.keys(LANGUAGES) as readonly Language[];
const WREN: Tie = {
  childId: CHILD,
  nickname: 'Wren',
  number: 7,
  relation: null,
  helpers: 2,
  eveningTime: storedTime('17:30'),
  schoolClass: kingfisher,
  siblingAge: 12,
};
const DISPLAY: Display = {
  way: 'clip',
  bigger: false,
  noTiming: false,
  quiet: true,
  clockAid: false,
  monthly: true,
};
const SHARING: Sharing = { ...WREN, refusal: null, openUntil: null, was: 'none' };
const slip = { slipId: CHILD, childId: CHILD, nickname: 'Wren', classTitle: kingfisher.title };
const children = ['Wren', 'Robin', 'Otter', 'Finch', 'Heron', 'Swift'].map((nickname) => ({
  tie: { ...WREN, nickname },
  practised: { evenings: 17, since: null },
  days: kingfisher.weekdays,
  stand: null,
}));
const two = [
  { id: CHILD, nickname: 'Wren' },
  { id: CHILD, nickname: 'Robin' },
];

const labels = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const linesOf = ({ text, words }: Screen) => `${text.text}${words ? `\n${words}` : ''}`.split('\n');

/** Every screen of this part, as it is in the reader's language. */
const all = (): readonly Screen[] => [
  relationScreen(joined(slip, family('Wren')), WREN),
  joinTimeScreen(WREN),
  joinWayScreen(WREN, 'clip', ['Wren']),
  allSetScreen(WREN),
  leaveWhomScreen(two),
  settingsScreen(children, DISPLAY, 1_234_567),
  timeSettingScreen(WREN),
  waySettingScreen(DISPLAY, []),
  shareScreen(SHARING, 'Fri 27 Nov, 18:05'),
  shareScreen({ ...SHARING, refusal: 'week' }, null),
  shareScreen({ ...SHARING, refusal: 'helpers' }, null),
  shareScreen({ ...SHARING, refusal: 'sibling' }, null),
  shareWhomScreen(two),
  sharedScreen('Wren', 'https://t.me/harbour_lane_bot?start=AAAAAAAAAAAAAAAAAAAAAA', 'Fri, 18:05'),
  siblingAgeScreen(CHILD, 12),
];

describe.each(TAGS)('in %s, a family’s screen', (tag) => {
  const screens = readIn(tag, all);

  it('has less than ten lines and no button twice', () => {
    for (const screen of screens) {
      expect(linesOf(screen).length, screen.text.text).toBeLessThan(10);
      expect(new Set(labels(screen)).size).toBe(labels(screen).length);
    }
  });

  it('has buttons of six words and thirty characters at most', () => {
    for (const label of screens.flatMap(labels)) {
      expect(label.replace(/^✓ /, '').length, label).toBeLessThanOrEqual(30);
      expect(label.split(' ').filter((word) => /\p{L}/u.test(word)).length).toBeLessThanOrEqual(6);
    }
  });
});

describe('the three choices after agreeing', () => {
  it('can each be left as it is, and are three', () => {
    expect(labels(relationScreen(joined(slip, family('Wren')), WREN))).toEqual([
      'Parent or guardian',
      'Brother or sister, 12 or over',
      'Another adult',
      'Rather not say',
    ]);
    expect(labels(joinTimeScreen(WREN)).at(-1)).toBe('Keep as it is');
    expect(labels(joinWayScreen(WREN, 'clip', [])).at(-1)).toBe('Keep as it is');
    expect(labels(allSetScreen(WREN))).toEqual([]);
  });

  it('offer three usual times and the class’s, in order and each once, with a tick at the one in use', () => {
    const times = (tie: Tie) => labels(joinTimeScreen(tie)).slice(0, -1);
    expect(times(WREN)).toEqual(['17:00', '✓ 17:30', '18:00', '19:00']);
    const atSix = { ...WREN, eveningTime: storedTime('18:00') };
    const schoolClass = { ...kingfisher, eveningTime: storedTime('18:00') };
    expect(times({ ...atSix, schoolClass })).toEqual(['17:00', '✓ 18:00', '19:00']);
    expect(times({ ...WREN, eveningTime: storedTime('18:15') })).not.toContain('✓ 17:30');
  });

  it('say who sees what a helper is to the child, and that the age is the school’s choice', () => {
    const { text } = relationScreen(joined(slip, family('Wren')), { ...WREN, siblingAge: 14 });
    expect(text.text).toContain('no teacher sees it');
    expect(text.text).toContain('from 14 on, by the school’s choice');
    expect(RELATIONS).toHaveLength(3);
  });
});

describe('a family’s settings', () => {
  it('tick what is on, and the button turns it off', () => {
    const screen = settingsScreen(children.slice(0, 1), DISPLAY, 0);
    expect(labels(screen).filter((label) => label.startsWith('✓'))).toEqual([
      '✓ Without a sound',
      '✓ Monthly picture',
    ]);
  });

  it('name four children and count the others', () => {
    const { text } = settingsScreen(children, DISPLAY, 0);
    expect(text.text).toContain('Finch:');
    expect(text.text).not.toContain('Heron');
    expect(text.text).toContain('And 2 more children.');
  });

  it('give the data of the month as an estimate, in the reader’s own figures', () => {
    const said = (bytes: number, tag: Language = 'en') =>
      readIn(tag, () => settingsScreen([], DISPLAY, bytes).text.text.split('\n')[1]);
    expect(said(1_234_567)).toBe(
      'Sent to you this month: about 1.2 MB. Your phone may have loaded more or less.',
    );
    expect(said(60_001)).toContain('about 61 kB');
    expect(said(0)).toContain('about 0 kB');
    expect(said(1_234_567, 'de')).toContain('etwa 1,2 MB');
    expect(said(1_234_567, 'fr')).toContain('1,2 Mo');
  });

  it('lead to everything a family can ask for', () => {
    const text = settingsScreen(children, DISPLAY, 0).text.text;
    for (const command of ['language', 'share', 'mydata', 'erase', 'stop']) {
      expect(text).toContain(`/${command}`);
    }
  });
});

describe('passing a child on', () => {
  it('has no button that makes a link while none can be made, and says why', () => {
    for (const refusal of ['sibling', 'helpers', 'week'] as const) {
      const screen = shareScreen({ ...SHARING, refusal }, null);
      expect(labels(screen)).toEqual(['To the settings']);
      expect(screen.text.text).toMatch(/ask one of them|give out one more slip/);
    }
    expect(labels(shareScreen(SHARING, null))).toContain('Make the link');
  });

  it('tells how many helpers there are and that no names are seen', () => {
    expect(shareScreen(SHARING, null).text.text).toContain(
      'Wren has 2 helpers now. The teacher sees the number, no names.',
    );
  });
});

it('the age of helping brothers and sisters is chosen from a list, with a tick and a way back', () => {
  const found = labels(siblingAgeScreen(CHILD, 12));
  expect(found).toEqual([...SIBLING_AGES.map((age) => (age === 12 ? '✓ 12' : `${age}`)), 'Back']);
});
