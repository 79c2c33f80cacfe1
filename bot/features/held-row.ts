/** A row of the table of everything that is kept about a child. */
export type HeldRow = readonly [
  what: string,
  when: string,
  name: string,
  value: string | number,
  more: string,
];

/** A row for something that happened at a time; none where it did not. */
export function sinceRow(what: string, since: string | null, name: string): HeldRow[] {
  return since === null ? [] : [[what, since, name, '', '']];
}
