export type { Db, OpenStore, Store } from './db.ts';
export type { DeliveryHandler, DeliveryJob, DeliveryQueue } from './delivery-queue.ts';
export { openEmbedded } from './open-embedded.ts';
export { openServer } from './open-server.ts';
export type { Peers, Topic } from './peers.ts';
export { type DatabaseState, probeEmbedded, probeServer } from './probe.ts';
