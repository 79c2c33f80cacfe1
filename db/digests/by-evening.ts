/** Groups rows by their evening. */
export function byEvening<Row extends { readonly eveningId: string }>(
  rows: readonly Row[],
): (eveningId: string) => readonly Row[] {
  const grouped = new Map<string, Row[]>();
  for (const row of rows) {
    const group = grouped.get(row.eveningId);
    if (group) group.push(row);
    else grouped.set(row.eveningId, [row]);
  }
  return (eveningId) => grouped.get(eveningId) ?? [];
}
