import { describe } from 'vitest';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { floodSuite } from './flood.suite.ts';
import { guessSuite } from './guesses.suite.ts';

describe.each(dearBackends)('what one account can do to others on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('by trying codes', () => guessSuite(opened));
  describe('by sending a lot at once', () => floodSuite(opened));
});
