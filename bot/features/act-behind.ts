import { listActs, type Store, type TeacherScope } from '../../db/index.ts';

/**
 * The act that put a plan in use, while it can be taken back; null where there is none. Read anew at each tap, so that a second
 * one keeps its Undo.
 */
export async function actBehind(
  store: Store,
  { teacherId }: TeacherScope,
  planId: string,
  kind: 'planUsed' | 'proposalAccepted',
  now: Date,
): Promise<string | null> {
  const acts = await listActs(store, { teacherId, now });
  const act = acts.find((each) => each.kind === kind && each.before.planId === planId);
  return act?.id ?? null;
}
