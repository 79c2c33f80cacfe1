import { describe } from 'vitest';
import { sharedStore } from '../support/shared-store.ts';
import { server } from '../support/stores.ts';
import { archivingSuite, breakActsSuite } from './archiving.suite.ts';
import { colleaguesSuite } from './teachers.suite.ts';

describe('a class', () => {
  const opened = sharedStore(server);
  describe('and its teachers:', () => colleaguesSuite(opened));
  describe('that is archived', () => archivingSuite(opened));
  describe('and its breaks:', () => breakActsSuite(opened));
});
