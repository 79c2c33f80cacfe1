import { describe } from 'vitest';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { atOnceSuite } from './at-once.suite.ts';
import { followTermSuite, movedTermSuite } from './follow-term.suite.ts';
import { loadDraftSuite, mixedPartSuite } from './plan-sources.suite.ts';
import { termSuite, termUndoSuite } from './schemes.suite.ts';

describe.each(dearBackends)('on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('a term', () => termSuite(opened));
  describe('a term’s acts', () => termUndoSuite(opened));
  describe('the plan of a term’s week', () => followTermSuite(opened));
  describe('the plan of a term’s week, when more than the calendar moves,', () =>
    movedTermSuite(opened));
  describe('a whole plan taken into the draft', () => loadDraftSuite(opened));
  describe('of plans changed by two at once,', () => atOnceSuite(opened));
  describe('a mixed part', () => mixedPartSuite(opened));
});
