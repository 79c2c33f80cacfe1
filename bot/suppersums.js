#!/usr/bin/env node
// The command as npm installs it. The program is TypeScript and runs as it is written.
import { register } from 'tsx/esm/api';

register();
await import('./cli/main.ts');
