import type { EveningView } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';

/** Where an evening stands. It is read off what is stored, so an old button always leads back to the truth. */
export type EveningStep =
  | { readonly step: 'closed' | 'declined' | 'stopped' | 'offer' | 'pages' | 'result' }
  | { readonly step: 'part' | 'marking'; readonly part: number };

/**
 * offer -> part 1 (-> marking) -> part 2 ... -> pages -> result; `declined` after "Not today", `stopped` after "Stop for today"
 * (where a mark can still be changed), `closed` once the day is over.
 *
 * @example
 * eveningStep(viewOfYesterday, today); // { step: 'closed' }
 */
export function eveningStep(view: EveningView, today: SchoolDay): EveningStep {
  if (view.day !== today) return { step: 'closed' };
  if (view.declined) return { step: 'declined' };
  const corrects = view.marking !== null && view.results[view.marking.part] !== null;
  if (view.stopped && !corrects) return { step: 'stopped' };
  if (view.marking) return { step: 'marking', part: view.marking.part };
  if (!view.started) return { step: 'offer' };
  const next = view.results.indexOf(null);
  if (next >= 0) return { step: 'part', part: next };
  return { step: view.book && view.pages === null ? 'pages' : 'result' };
}
