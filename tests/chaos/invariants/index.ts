import type { EveningFacts, Violation } from '../facts.ts';
import { checkHours } from './hours.ts';
import { checkMarks } from './marks.ts';
import { checkOnce } from './once.ts';
import { checkPauses, checkRate } from './rate.ts';
import { checkRest } from './rest.ts';

const CHECKS = [checkOnce, checkMarks, checkHours, checkRate, checkPauses, checkRest];

/** Everything that must hold for an evening; what does not. */
export function violations(facts: EveningFacts): Violation[] {
  return CHECKS.flatMap((check) => check(facts));
}
