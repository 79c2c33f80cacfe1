import type { RungId } from '../ladder/rung.ts';
import { ACARA } from './acara.ts';
import { CAPS } from './caps/caps.ts';
import { CCSS } from './ccss/ccss.ts';
import { ENGLAND } from './england/england.ts';
import { FURTHER } from './further.ts';
import type { Curriculum, Statement } from './statement.ts';

/** The one source of a rung that no statement asks for. */
export const NO_SOURCE = 'common practice, no source';

const DOUBT = {
  found: [],
  secondary: ['read in a summary only'],
  memory: ['from memory, please check'],
} as const;

const BY_RUNG = collect([ENGLAND, CCSS, CAPS, ACARA, ...FURTHER]);

/**
 * Where a rung's range is asked for, one line a statement, for a teacher to read: the statement in our short words, then
 * document, grade and printed code, and what is doubtful about it. A rung nobody asks for is `common practice, no source`.
 *
 * @example
 * sourcesOf('bonds.within5')[2]; // 'fluently add and subtract within 5 (Common Core, Kindergarten, K.OA.A.5)'
 */
export function sourcesOf(id: RungId): readonly string[] {
  return BY_RUNG.get(id) ?? [NO_SOURCE];
}

function collect(curricula: readonly Curriculum[]): ReadonlyMap<RungId, readonly string[]> {
  const byRung = new Map<RungId, string[]>();
  for (const curriculum of curricula) {
    for (const statement of curriculum.statements) {
      const line = lineOf(statement, curriculum);
      for (const id of statement.rungs) byRung.set(id, [...(byRung.get(id) ?? []), line]);
    }
  }
  return byRung;
}

function lineOf({ text, document, grade, code, status }: Statement, { grades }: Curriculum) {
  const label = grades.find(({ id }) => id === grade)?.label ?? grade;
  const place = [document, label, ...(code === null ? [] : [code]), ...DOUBT[status]].join(', ');
  return `${text} (${place})`;
}
