import { fileURLToPath } from 'node:url';

/** Where the SQL migrations lie, whatever folder the process was started in. */
export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../migrations', import.meta.url));
