/** Where the encoder's thread begins. Plain JavaScript, since only from here on is there a loader for TypeScript. */
import { register } from 'tsx/esm/api';

register();
await import('./serve-clips.ts');
