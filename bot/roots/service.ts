import type { App } from './create-app.ts';

/** A process's bot with everything around it, ready to start. */
export interface Service {
  readonly app: App;
  /** What to tell the person at the keyboard. */
  readonly welcome: string;
  stop(): Promise<void>;
}
