import { describe, expect, test } from 'vitest';
import { RUNGS, rungById, rungsOf, STRANDS, strandTitle } from '../../../drills/index.ts';
import { factRung } from '../../../drills/ladder/fact-rung.ts';
import { doublesTo, tiesTo } from '../../../drills/ladder/fact-sets.ts';

const SIZES = {
  'words.to20': 21,
  'words.tens': 10,
  'words.to100': 101,
  'words.to200': 201,
  'bonds.within5': 21,
  'bonds.to10': 66,
  'bonds.make10': 11,
  'bonds.ties': 28,
  'bonds.bridging': 36,
  'bonds.make20': 21,
  'bonds.to20': 231,
  'bonds.anygap10': 132,
  'bonds.anygap20': 462,
  'takeaway.within5': 21,
  'takeaway.to10': 66,
  'takeaway.teens': 54,
  'takeaway.bridging': 36,
  'takeaway.to20': 231,
  'takeaway.anygap10': 132,
  'takeaway.anygap20': 462,
  'doubles.to5': 5,
  'doubles.to10': 10,
  'doubles.to20': 20,
  'doubles.tens': 5,
  'halves.to10': 5,
  'halves.to20': 10,
  'halves.to40': 20,
  'halves.tens': 10,
  'clock.oclock': 12,
  'clock.half': 12,
  'clock.mixed': 24,
  'clock.quarterpast': 12,
  'clock.quarterto': 12,
  'clock.quarters': 48,
  'clock.fivepast': 48,
  'clock.fiveto': 48,
  'clock.all': 144,
  'times.twos': 10,
  'times.tens': 10,
  'times.fives': 10,
  'times.mixed': 30,
};

describe('the ladder', () => {
  test('every rung of facts has the size it is known by, in this order, and there are no others', () => {
    const sizes = RUNGS.flatMap((rung) =>
      rung.kind === 'facts' ? [[rung.id, rung.facts.length]] : [],
    );
    expect(sizes).toEqual(Object.entries(SIZES));
  });

  test('no id and no title is used twice', () => {
    expect(new Set(RUNGS.map(({ id }) => id)).size).toBe(RUNGS.length);
    expect(new Set(RUNGS.map(({ title }) => title)).size).toBe(RUNGS.length);
  });

  test('an id fits in a button and a title in a line', () => {
    for (const { id, title } of RUNGS) {
      expect(id).toMatch(/^[a-z]+\.[a-z0-9]{1,22}$/);
      expect(title.length, title).toBeLessThanOrEqual(54);
    }
  });

  test('no rung holds a fact twice', () => {
    for (const rung of RUNGS) {
      if (rung.kind === 'facts') expect(new Set(rung.facts).size, rung.id).toBe(rung.facts.length);
    }
  });

  test('an id begins with its strand', () => {
    for (const rung of RUNGS) expect(rung.id.split('.')[0]).toBe(rung.strand);
  });

  test('ten cards are asked by default, five where the set has only five', () => {
    const few = RUNGS.filter(({ cards }) => cards !== 10).map(({ id, cards }) => [id, cards]);
    expect(few).toEqual([
      ['doubles.to5', 5],
      ['doubles.tens', 5],
      ['halves.to10', 5],
    ]);
  });

  test('a clock is given five seconds and everything else three', () => {
    for (const rung of RUNGS) expect(rung.seconds).toBe(rung.strand === 'clock' ? 5 : 3);
  });

  test('a rung says where its range comes from, in words before codes', () => {
    for (const { sources, id } of RUNGS) {
      expect(sources, id).not.toEqual([]);
      for (const source of sources) {
        expect(source, id).toMatch(/^common practice, no source$|^[^A-Z]+ .+ \([A-Z][^()]+\)$/);
      }
    }
  });
});

describe('what a rung needs', () => {
  test('each is a rung, and never the rung itself', () => {
    for (const { id, needs } of RUNGS) {
      for (const need of needs) {
        expect(rungById(need), `${id} needs ${need}`).not.toBeNull();
        expect(need).not.toBe(id);
      }
      expect(new Set(needs).size).toBe(needs.length);
    }
  });

  test('no rung needs itself by a long way round', () => {
    const settled = new Set<string>();
    const waiting = new Set(RUNGS);
    for (let before = -1; before !== settled.size; ) {
      before = settled.size;
      for (const rung of waiting) {
        if (rung.needs.every((need) => settled.has(need))) {
          settled.add(rung.id);
          waiting.delete(rung);
        }
      }
    }
    expect([...waiting].map(({ id }) => id)).toEqual([]);
  });

  test('in its own strand a rung needs only rungs that stand before it', () => {
    const place = new Map<string, number>(RUNGS.map(({ id }, at) => [id, at]));
    for (const [at, { needs, strand }] of RUNGS.entries()) {
      for (const need of needs.filter((each) => each.startsWith(`${strand}.`))) {
        expect(place.get(need)).toBeLessThan(at);
      }
    }
  });

  test('only the first steps of words, adding, the clock and counting need nothing', () => {
    const begin = RUNGS.filter(({ needs }) => needs.length === 0).map(({ id }) => id);
    expect(begin).toEqual([
      'words.to20',
      'bonds.within5',
      'clock.oclock',
      'counting.onesback20',
      'counting.ones100',
    ]);
  });
});

describe('finding rungs', () => {
  test('a rung is found by its id', () => {
    expect(rungById('counting.tens')?.title).toBe('counting in tens to 200');
    expect(rungById('counting.onesback')?.title).toBe('counting back in ones within 200');
    expect(rungById('bonds.to10')?.title).toBe('adding within 10');
    expect(rungById('bonds.within5')?.title).toBe('adding within 5');
  });

  test('an unknown id gives null, also one that every object knows', () => {
    expect(rungById('bonds.to30')).toBeNull();
    expect(rungById('toString')).toBeNull();
  });

  test('a strand lists its own rungs, the easier one first', () => {
    expect(rungsOf('doubles').map(({ id }) => id)).toEqual([
      'doubles.to5',
      'doubles.to10',
      'doubles.to20',
      'doubles.tens',
    ]);
  });

  test('the strands together hold every rung once, in the same order', () => {
    expect(STRANDS.flatMap(rungsOf)).toEqual(RUNGS);
  });

  test('strands are called in plain words', () => {
    expect(STRANDS.map(strandTitle)).toEqual([
      'number words',
      'number bonds',
      'take away',
      'doubles',
      'halves',
      'clock',
      'counting',
      'times tables',
    ]);
  });
});

describe('making rungs', () => {
  test('a set of five asks five cards', () => {
    expect(factRung('doubles', 'to5', 'doubles to 5 + 5', doublesTo(5)).cards).toBe(5);
  });

  test('ties come with their near ties in both orders', () => {
    expect(tiesTo(4)).toEqual(['add:1+1', 'add:2+2', 'add:1+2', 'add:2+1']);
  });
});
