import type { RungId } from '../ladder/rung.ts';

/**
 * How surely a statement is what the curriculum says: `found`, read in a copy of the document; `secondary`, read only in somebody
 * else's transcription or summary; `memory`, written from memory and not confirmed.
 */
export type Status = 'found' | 'secondary' | 'memory';

/**
 * What a curriculum asks of a grade, in our own short words. `document` is the text it stands in and `code` the reference printed
 * there, null where the document has none or it is known from memory only. `grade` is the id of a grade of the profile.
 */
export interface Statement {
  readonly document: string;
  readonly grade: string;
  readonly text: string;
  readonly code: string | null;
  readonly status: Status;
}

/** A statement with the rungs whose range it asks for. */
export interface PlacedStatement extends Statement {
  readonly rungs: readonly RungId[];
}

/** A grade as a profile names it: `id` is short and is stored, `label` is what that curriculum calls it. */
export interface Grade {
  readonly id: string;
  readonly label: string;
}

/** One curriculum: its grades, youngest first, and what it asks of them. */
export interface Curriculum {
  readonly title: string;
  readonly grades: readonly Grade[];
  readonly statements: readonly PlacedStatement[];
}
