import { afterAll, beforeAll } from 'vitest';
import type { OpenStore, Store } from '../../db/index.ts';
import type { Backend } from './stores.ts';

/**
 * Opens one store for the describe block around the call and closes it at the end. Opening takes more than a second, so the
 * tests of a block share it and keep apart by making their own people (see people.ts).
 */
export function sharedStore(backend: Backend): () => Store {
  let store: OpenStore | undefined;
  beforeAll(async () => {
    store = await backend.open();
  });
  afterAll(async () => {
    await store?.close();
  });
  return () => {
    if (!store) throw new Error('a shared store is open inside tests and hooks only');
    return store;
  };
}
