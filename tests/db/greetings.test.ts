import { describe } from 'vitest';
import { sharedStore } from '../support/shared-store.ts';
import { backends, server } from '../support/stores.ts';
import { greetingDeliverySuite, greetingEveningsSuite } from './greeting-delivery.suite.ts';
import { greetingEndSuite, greetingSuite } from './greetings.suite.ts';
import { ownStepsSuite, ownWaySuite } from './own-way.suite.ts';

describe.each(backends)('on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('a greeting that is owed', () => greetingDeliverySuite(opened));
});

describe('for a class', () => {
  const opened = sharedStore(server);
  describe('a greeting', () => greetingSuite(opened));
  describe('a greeting out of use', () => greetingEndSuite(opened));
  describe('the evenings of a greeting', () => greetingEveningsSuite(opened));
  describe('what is for one child only', () => ownWaySuite(opened));
  describe('steps of one child’s own', () => ownStepsSuite(opened));
});
