import type { Site } from '../store.ts';

/** What one look at the installation came to: `ok` with what was found, or what to do. */
export interface Finding {
  readonly what: string;
  readonly ok: boolean;
  readonly say: string;
}

/** Looks at one thing and changes nothing. What it throws counts as something to do. */
export interface Check {
  readonly what: string;
  look(site: Site): Promise<Omit<Finding, 'what'>>;
}

/** All is well. */
export const fine = (say: string) => ({ ok: true, say });
/** Something has to be done. */
export const mend = (say: string) => ({ ok: false, say });
