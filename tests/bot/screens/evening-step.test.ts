import { describe, expect, it } from 'vitest';
import { eveningStep } from '../../../bot/screens/evening-step.ts';
import { bonds, finished, scored, TUESDAY, view, WEDNESDAY } from '../support/evening.ts';

const step = (change: Parameters<typeof view>[0]) => eveningStep(view(change), TUESDAY);
const one = [scored(bonds), null, null];

describe('an evening', () => {
  it('begins with its offer', () => {
    expect(step({})).toEqual({ step: 'offer' });
  });

  it('goes through its parts, one after the other', () => {
    expect(step({ started: true })).toEqual({ step: 'part', part: 0 });
    expect(step({ started: true, results: one })).toEqual({ step: 'part', part: 1 });
  });

  it('goes back to a part that was passed over', () => {
    const results = [scored(bonds), null, scored(bonds)];
    expect(step({ started: true, results })).toEqual({ step: 'part', part: 1 });
  });

  it('stays with the part that is being marked, even when all are marked already', () => {
    const marking = { part: 0, missed: [] };
    expect(step({ started: true, results: one, marking })).toEqual({ step: 'marking', part: 0 });
    expect(eveningStep(finished({ marking }), TUESDAY)).toEqual({ step: 'marking', part: 0 });
  });

  it('asks for pages after the last part, and ends when they are said, be it none', () => {
    expect(eveningStep(finished({ pages: null }), TUESDAY)).toEqual({ step: 'pages' });
    expect(eveningStep(finished({ pages: 0 }), TUESDAY)).toEqual({ step: 'result' });
  });

  it('never asks for pages without a workbook', () => {
    expect(eveningStep(finished({ book: null, pages: null }), TUESDAY)).toEqual({ step: 'result' });
  });

  it('put off for the day is declined, whatever else was begun', () => {
    const begun = { started: true, results: one, marking: { part: 1, missed: [] } };
    expect(step({ ...begun, declined: true })).toEqual({ step: 'declined' });
  });

  it('of another day is closed, whatever its state; as the docstring says', () => {
    for (const each of [view(), view({ declined: true }), finished(), view({ started: true })]) {
      expect(eveningStep(each, WEDNESDAY)).toEqual({ step: 'closed' });
    }
  });
});
