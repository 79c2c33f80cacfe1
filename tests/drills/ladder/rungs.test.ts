import { describe, expect, test } from 'vitest';
import { RUNGS, rungById, rungsOf, STRANDS, strandTitle } from '../../../drills/index.ts';

const SIZES = {
  'bonds.within5': 21,
  'bonds.to10': 66,
  'bonds.make10': 11,
  'takeaway.within5': 21,
  'takeaway.to10': 66,
  'doubles.to5': 5,
  'doubles.to10': 10,
  'halves.to10': 5,
  'halves.to20': 10,
  'clock.oclock': 12,
  'clock.half': 12,
  'clock.mixed': 24,
};

const RUNS = {
  'counting.tens100': [10, 'on', 100],
  'counting.tens': [10, 'on', 200],
  'counting.fives100': [5, 'on', 100],
  'counting.fives': [5, 'on', 200],
  'counting.twos100': [2, 'on', 100],
  'counting.twos': [2, 'on', 200],
  'counting.onesback20': [1, 'back', 20],
  'counting.onesback100': [1, 'back', 100],
  'counting.onesback': [1, 'back', 200],
};

describe('the ladder', () => {
  test('every rung has the size and range it is known by, and there are no others', () => {
    const sizes = RUNGS.flatMap((rung) =>
      rung.kind === 'facts' ? [[rung.id, rung.facts.length]] : [],
    );
    const runs = RUNGS.flatMap((rung) =>
      rung.kind === 'run' ? [[rung.id, [rung.step, rung.direction, rung.limit]]] : [],
    );
    expect(Object.fromEntries(sizes)).toEqual(SIZES);
    expect(Object.fromEntries(runs)).toEqual(RUNS);
  });

  test('no id and no title is used twice', () => {
    expect(new Set(RUNGS.map(({ id }) => id)).size).toBe(RUNGS.length);
    expect(new Set(RUNGS.map(({ title }) => title)).size).toBe(RUNGS.length);
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
      ['halves.to10', 5],
    ]);
  });

  test('a clock is given five seconds and everything else three', () => {
    for (const rung of RUNGS) expect(rung.seconds).toBe(rung.strand === 'clock' ? 5 : 3);
  });

  test('a rung says where its range comes from', () => {
    for (const rung of RUNGS) expect(rung.source, rung.id).toMatch(/no source$|.{20}/);
  });
});

describe('finding rungs', () => {
  test('a rung is found by its id', () => {
    expect(rungById('counting.tens')?.title).toBe('counting in tens to 200');
    expect(rungById('counting.onesback')?.title).toBe('counting back in ones within 200');
  });

  test('an unknown id gives null, also one that every object knows', () => {
    expect(rungById('bonds.to30')).toBeNull();
    expect(rungById('toString')).toBeNull();
  });

  test('a strand lists its own rungs, the easier one first', () => {
    expect(rungsOf('doubles').map(({ id }) => id)).toEqual(['doubles.to5', 'doubles.to10']);
  });

  test('the strands together hold every rung once, in the same order', () => {
    expect(STRANDS.flatMap(rungsOf)).toEqual(RUNGS);
  });

  test('strands are called in plain words', () => {
    expect(STRANDS.map(strandTitle)).toEqual([
      'number bonds',
      'take away',
      'doubles',
      'halves',
      'clock',
      'counting',
    ]);
  });
});
