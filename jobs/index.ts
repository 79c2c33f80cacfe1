export { startCron } from './cron.ts';
export { createEngine, type Engine } from './engine.ts';
export type { EngineDeps, Pace, PlanDeps } from './ports.ts';
export { createRenderAhead, type RenderAhead } from './render-ahead.ts';
export type { TickReport } from './tick.ts';
