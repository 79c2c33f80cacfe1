/**
 * One thing to know, as a stable string: `add:3+4`, `gap:7+10` (7 + ? = 10), `sub:9-4`, `double:7`,
 * `half:14`, `clock:0330` (hour 01 to 12, then minutes). It is stored with every mark, so the spelling never changes.
 */
export type FactId = `${'add' | 'gap' | 'sub' | 'double' | 'half' | 'clock'}:${string}`;
