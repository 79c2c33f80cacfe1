import {
  type EveningPages,
  type EveningView,
  instantAt,
  type SchoolClass,
} from '../../db/index.ts';
import { askedOf, type Drill, type DrillPart, type SchoolDay } from '../../drills/index.ts';
import type { Action } from '../callback/actions.ts';
import { unpack } from '../callback/codec.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { previewName, previewNote } from '../texts/preview.ts';
import { lines } from '../texts/words.ts';
import { eveningScreen, type Means } from './evening-screen.ts';
import { type PreviewState, packPreview, placesOf } from './preview-state.ts';
import { type Button, button, type Screen } from './screen.ts';

/** No evening and no child has this id. */
const NOBODY = '00000000-0000-7000-8000-000000000000';
const LATER_MS = 30 * 60_000;

/** What a preview shows: the drill of a child of whom nothing is known, on the day of the next evening. */
export interface Preview {
  readonly schoolClass: SchoolClass;
  readonly day: SchoolDay;
  readonly drill: Drill;
  /** Whether it is made from a draft, which is not in use. */
  readonly isDraft: boolean;
  readonly book: EveningPages | null;
}

/**
 * An evening as a family gets it, for nobody. The screens are the family's own; each button leads to the next screen of the
 * preview and to nothing that is stored.
 */
export function previewScreen(preview: Preview, state: PreviewState, means: Means): Screen {
  const { schoolClass, drill, isDraft } = preview;
  const { id: classId } = schoolClass;
  const screen = eveningScreen(viewOf(preview, state), preview.day, means);
  const rows = screen.buttons.map((row) =>
    row.flatMap(({ label, data }): Button[] => {
      const action = unpack(data);
      const next = action && nextState(state, action, drill);
      return next ? [button(label, { kind: 'preview', classId, at: packPreview(next) })] : [];
    }),
  );
  const end = button(BUTTONS.previewEnd, { kind: 'previewEnd', classId });
  return {
    ...screen,
    text: state.at === 'started' ? screen.text : lines(previewNote(isDraft), '', screen.text),
    buttons: [...rows.filter((row) => row.length > 0), [end]],
  };
}

function viewOf({ schoolClass, day, drill, book }: Preview, state: PreviewState): EveningView {
  const { zone, language, eveningTime } = schoolClass;
  const done = state.done.slice(0, drill.parts.length);
  const next = drill.parts[done.length];
  return {
    id: NOBODY,
    childId: NOBODY,
    classId: schoolClass.id,
    nickname: previewName(),
    zone,
    language,
    day,
    drill,
    book,
    started: state.at === 'started' || state.at === 'stopped',
    declined: state.at === 'not_today',
    stopped: state.at === 'stopped',
    remindAt:
      state.at === 'later'
        ? new Date(instantAt(day, eveningTime, zone).getTime() + LATER_MS)
        : null,
    results: drill.parts.map((part, at) => {
      const value = done[at];
      return value === undefined ? null : resultOf(part, value);
    }),
    marking:
      state.marking !== null && next
        ? { part: done.length, missed: placesOf(state.marking, askedOf(next)) }
        : null,
    pages: state.pages,
  };
}

function resultOf(part: DrillPart, value: number): NonNullable<EveningView['results'][number]> {
  const asked = askedOf(part);
  const missed = part.kind === 'facts' ? placesOf(value, asked) : [];
  const right = part.kind === 'facts' ? asked - missed.length : Math.min(value, asked);
  return { right, asked, missed, revision: 1, earlier: [] };
}

/** Where a button of a family's screen leads in the preview; null for one that has no place in it. */
function nextState(state: PreviewState, action: Action, drill: Drill): PreviewState | null {
  const part = drill.parts[state.done.length];
  const closed = (value: number) => ({ ...state, done: [...state.done, value], marking: null });
  const marking = state.marking ?? 0;
  switch (action.kind) {
    case 'start':
      return { ...state, at: 'started' };
    case 'later':
      return { ...state, at: 'later' };
    case 'notToday':
      return { at: 'not_today', done: [], marking: null, pages: null };
    case 'stopToday':
      return { ...state, at: 'stopped' };
    case 'allRight':
      return closed(part?.kind === 'run' ? askedOf(part) : 0);
    case 'mark':
      return { ...state, marking };
    case 'toggle':
      return { ...state, marking: marking + (action.missed === 1 ? -1 : 1) * 2 ** action.card };
    case 'done':
      return closed(marking);
    case 'said':
      return closed(action.said);
    case 'pages':
      return { ...state, pages: action.pages };
    default:
      return null;
  }
}
