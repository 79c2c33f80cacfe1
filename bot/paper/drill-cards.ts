import {
  answerOf,
  askedOf,
  type Drill,
  type DrillPart,
  faceOf,
  type Language,
  runNumbers,
} from '../../drills/index.ts';
import { PAPER_WORDS } from '../texts/paper.ts';
import { shortPartTitle } from '../texts/part-title.ts';
import type { PaperCard } from './cards-to-cut.ts';
import type { PaperTask } from './task-strip.ts';

/**
 * A drill's cards with their answers; a counting run is one card with all its numbers on the back.
 *
 * @example
 * drillCards(drill, 'en')[0]; // { face: { kind: 'text', text: '3 + 4' }, answer: '7', part: 'adding within 10' }
 */
export function drillCards(drill: Drill, language: Language): PaperCard[] {
  return drill.parts.flatMap((part) => {
    const title = shortPartTitle(part);
    return facesOf(part, language).map((card) => ({ ...card, part: title }));
  });
}

/**
 * A drill's parts as tasks of a practice sheet.
 *
 * @example
 * drillTasks(drill, 'en')[0]?.asked; // 10 for a part of ten cards
 */
export function drillTasks(drill: Drill, language: Language): PaperTask[] {
  return drill.parts.map((part) => ({
    title: shortPartTitle(part),
    faces: facesOf(part, language).map(({ face }) => face),
    asked: askedOf(part),
  }));
}

function facesOf(part: DrillPart, language: Language): Omit<PaperCard, 'part'>[] {
  if (part.kind === 'facts') {
    return part.cards.map((fact) => ({
      face: faceOf(fact, language),
      answer: answerOf(fact, language),
    }));
  }
  const text = PAPER_WORDS[language].run(part.start, part.step);
  return [{ face: { kind: 'text', text }, answer: runNumbers(part).join(', ') }];
}
