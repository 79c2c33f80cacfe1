import { type Call, FIRST_CALLS } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import type { Page } from '../screens/pages.ts';
import { clauses } from './clauses.ts';
import { bold, lines, name, type Text } from './words.ts';

/** Families whose messages do not arrive any more, as opposed to those who do not answer. */
const STOPPED: readonly Call['reason'][] = ['unreachable', 'undelivered', 'left'];

/** What is the matter, in a few words. */
function because({ reason, evenings }: Call): string {
  switch (reason) {
    case 'undelivered':
    case 'silent':
      return say(`digest-calls-${reason}`, { evenings });
    default:
      return say(`digest-calls-${reason}`);
  }
}

/** The families to phone first, in one line; null when there are none. */
export function callsLine(calls: readonly Call[]): string | null {
  const families = whoAndWhy(calls.filter(({ reason }) => !STOPPED.includes(reason)));
  return families === null ? null : say('digest-calls-to-call', { families });
}

/** The families who stopped receiving, in one line; null when there are none. */
export function stoppedLine(calls: readonly Call[]): string | null {
  const families = whoAndWhy(calls.filter(({ reason }) => STOPPED.includes(reason)));
  return families === null ? null : say('digest-calls-stopped', { families });
}

function whoAndWhy(calls: readonly Call[]): string | null {
  if (calls.length === 0) return null;
  const shown = calls
    .slice(0, FIRST_CALLS)
    .map((call) => say('digest-calls-who-and-why', { who: who(call), why: because(call) }));
  return clauses(shown, calls.length - shown.length);
}

function who({ number, nickname }: Call): string {
  return `${number}. ${name(nickname)}`;
}

/** One page of the families worth a call, with what could be said to each; never a number of another child. */
export function callList({ shown, page, pages }: Page<Call>): Text {
  return lines(
    bold(
      pages > 1
        ? say('digest-calls-title-paged', { page: page + 1, pages })
        : say('digest-calls-title'),
    ),
    ...shown.map(callLine),
    shown.length === 0 ? say('digest-calls-none') : null,
  );
}

function callLine(call: Call): string {
  const kindly = say(`digest-calls-kindly-${call.reason}`);
  return say('digest-calls-line', { who: who(call), why: because(call), kindly });
}
