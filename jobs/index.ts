export { startCron, tickOnce } from './cron.ts';
export type { PlanDeps } from './ports.ts';
export { createRenderAhead, type RenderAhead } from './render-ahead.ts';
export { createSender, type Sender } from './sender.ts';
export { type TickReport, tick } from './tick.ts';
