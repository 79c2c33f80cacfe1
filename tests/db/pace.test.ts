import { describe } from 'vitest';
import { sharedStore } from '../support/shared-store.ts';
import { backends, server } from '../support/stores.ts';
import { boundsSuite } from './nudge-bounds.suite.ts';
import { paceReviewSuite } from './pace-review.suite.ts';
import { paceWordsSuite } from './pace-words.suite.ts';

describe.each(backends)('the pace on $name', (backend) => {
  const opened = sharedStore(backend);
  paceWordsSuite(opened);
});

// Many evenings, and nothing in them that the embedded database could do otherwise.
describe('the pace, over weeks,', () => {
  const opened = sharedStore(server);
  describe('and nudges', () => boundsSuite(opened));
  paceReviewSuite(opened);
});
