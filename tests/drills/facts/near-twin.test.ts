import { describe, expect, test } from 'vitest';
import { type FactId, isNearTwin } from '../../../drills/index.ts';

describe('isNearTwin', () => {
  test.each<[FactId, FactId]>([
    ['add:3+4', 'add:4+3'],
    ['sub:7-3', 'sub:7-4'],
    ['gap:3+10', 'gap:7+10'],
    ['add:3+4', 'sub:7-4'],
    ['add:3+4', 'gap:3+7'],
    ['double:7', 'half:14'],
    ['double:4', 'add:4+4'],
  ])('%s and %s are near twins, whichever comes first', (a, b) => {
    expect(isNearTwin(a, b)).toBe(true);
    expect(isNearTwin(b, a)).toBe(true);
  });

  test.each<[FactId, FactId]>([
    ['add:3+4', 'add:3+4'],
    ['add:3+4', 'add:2+5'],
    ['add:3+4', 'add:3+5'],
    ['sub:7-3', 'sub:8-3'],
    ['gap:3+10', 'gap:4+10'],
    ['double:7', 'double:8'],
    ['clock:0300', 'clock:0330'],
    ['clock:0300', 'clock:0300'],
  ])('%s and %s are not', (a, b) => {
    expect(isNearTwin(a, b)).toBe(false);
    expect(isNearTwin(b, a)).toBe(false);
  });
});
