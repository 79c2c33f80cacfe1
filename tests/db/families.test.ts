import { describe } from 'vitest';
import { sharedStore } from '../support/shared-store.ts';
import { backends, server } from '../support/stores.ts';
import { dataUsedSuite } from './data-used.suite.ts';
import { displaySuite } from './display.suite.ts';
import { leavingSuite } from './leaving.suite.ts';
import { monthsSuite } from './months.suite.ts';
import { sharingSuite } from './sharing.suite.ts';

describe.each(backends)('on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('how things are shown to a helper', () => displaySuite(opened));
  describe('what was sent to a helper', () => dataUsedSuite(opened));
});

describe('a family', () => {
  const opened = sharedStore(server);
  describe('that passes a link on', () => sharingSuite(opened));
  describe('that leaves one child, or comes back', () => leavingSuite(opened));
  describe('and its child’s month', () => monthsSuite(opened));
});
