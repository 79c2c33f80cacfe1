import type { DisplaySwitches, EveningView, Practised, Way } from '../../db/index.ts';
import { type DrillPart, UNADJUSTED } from '../../drills/index.ts';
import type { Clips } from '../clip/index.ts';
import type { Painter } from '../media/index.ts';

/** Another child's evening of the same helper. */
export interface OtherChild {
  readonly evening: string;
  readonly nickname: string;
}

/** What an evening is shown with. Without `clips` there are pictures; without `way` the family has not chosen: clips. */
export interface Means extends Partial<Pick<DisplaySwitches, 'bigger' | 'noTiming' | 'clockAid'>> {
  readonly painter: Painter;
  readonly clips?: Clips | undefined;
  readonly way?: Way | undefined;
  /** Whose turn comes next once this evening is over, and whose comes before this one. */
  readonly next?: OtherChild | undefined;
  readonly before?: OtherChild | undefined;
  /** How many evenings were practised, for the end of this one. */
  readonly practised?: Practised | undefined;
}

/** How one part's cards reach the child: a clip, all on a sheet, one at a time, or as words in the text. */
export type Showing = 'clip' | 'sheet' | 'single' | 'words';

/**
 * How a part is shown to a helper. Bigger type turns a sheet, where many cards share one picture, into one card at a time; a
 * clip shows one at a time by itself, and words follow the phone's own type size. A counting run is never cut into cards.
 */
export function showingOf(view: EveningView, part: DrillPart, means: Means): Showing {
  const { way = 'clip', bigger = false, clips } = means;
  if (way === 'words' && !hasClocks(part)) return 'words';
  if (part.kind === 'run') return 'sheet';
  if (way === 'clip' && clips !== undefined && !isUntimed(view, means)) return 'clip';
  return way === 'single' || bigger ? 'single' : 'sheet';
}

/** Whether a part's cards come without any timing: by the teacher's choice or by the family's. Either is enough. */
export function isUntimed({ drill }: EveningView, { noTiming = false }: Means): boolean {
  return noTiming || drill.adjusted?.untimed === true;
}

/** The evening as its texts are made from: one without timing by the family's choice names no seconds either. */
export function asShown(view: EveningView, means: Means): EveningView {
  const { drill } = view;
  if (!isUntimed(view, means) || drill.adjusted?.untimed) return view;
  const adjusted = { ...UNADJUSTED, ...drill.adjusted, untimed: true };
  return { ...view, drill: { ...drill, adjusted } };
}

/** Whether the message shows a picture or clip by the time it comes to a part: it cannot lose it any more. */
export function isPicturedBefore(view: EveningView, index: number, means: Means): boolean {
  return view.drill.parts.slice(0, index).some((part) => isPictured(view, part, means));
}

/** Whether some screen of a part has a picture or clip. */
export function isPictured(view: EveningView, part: DrillPart, means: Means): boolean {
  const showing = showingOf(view, part, means);
  if (showing === 'single') return means.bigger === true || hasClocks(part);
  return showing !== 'words';
}

/** Whether a part has clocks to read. Nothing but a picture shows one. */
export function hasClocks(part: DrillPart): boolean {
  return part.kind === 'facts' && part.cards.some((fact) => fact.startsWith('clock:'));
}
