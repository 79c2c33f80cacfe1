export { startCron } from './cron.ts';
export { createEngine, type Engine } from './engine.ts';
export type { Clock, Courier, EngineDeps, Log, Outcome, Pace, Parcel, PlanDeps } from './ports.ts';
export type { TickReport } from './tick.ts';
