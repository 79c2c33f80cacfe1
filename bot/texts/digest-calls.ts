import { type Call, FIRST_CALLS } from '../../drills/index.ts';
import type { Page } from '../screens/pages.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** Families whose messages do not arrive any more, as opposed to those who do not answer. */
const STOPPED: readonly Call['reason'][] = ['unreachable', 'undelivered', 'left'];

/** What is the matter, in a few words. */
function because({ reason, evenings }: Call): string {
  switch (reason) {
    case 'unreachable':
      return 'messages no longer arrive';
    case 'undelivered':
      return `${count(evenings, 'evening', 'evenings')} in a row not delivered`;
    case 'silent':
      return `${count(evenings, 'evening', 'evenings')} in a row without an answer`;
    case 'left':
      return 'the helper has left';
    case 'not_joined':
      return 'no helper has joined yet';
  }
}

/** What could be said, kindly. */
const KINDLY: Readonly<Record<Call['reason'], string>> = {
  unreachable: 'Has the phone changed? A new slip joins them again.',
  undelivered: 'Nothing was wrong on their side. Does the phone have data?',
  silent: 'Would another time suit, or a shorter drill?',
  left: 'Would somebody else like to sit with the child? A new slip joins them.',
  not_joined: 'Did the slip arrive? A new one can be printed.',
};

/** The families to phone first, in one line; null when there are none. */
export function callsLine(calls: readonly Call[]): string | null {
  return whoAndWhy(
    'To call',
    calls.filter(({ reason }) => !STOPPED.includes(reason)),
  );
}

/** The families who stopped receiving, in one line; null when there are none. */
export function stoppedLine(calls: readonly Call[]): string | null {
  return whoAndWhy(
    'Not receiving',
    calls.filter(({ reason }) => STOPPED.includes(reason)),
  );
}

function whoAndWhy(label: string, calls: readonly Call[]): string | null {
  if (calls.length === 0) return null;
  const shown = calls.slice(0, FIRST_CALLS).map((call) => `${who(call)} (${because(call)})`);
  const more = calls.length - shown.length;
  return `${label}: ${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`;
}

function who({ number, nickname }: Call): string {
  return `${number}. ${name(nickname)}`;
}

/** One page of the families worth a call, with what could be said to each; never a number of another child. */
export function callList({ shown, page, pages }: Page<Call>): Text {
  return lines(
    bold(pages > 1 ? `Families to call, page ${page + 1} of ${pages}` : 'Families to call'),
    ...shown.map((call) => `${who(call)}: ${because(call)}. ${KINDLY[call.reason]}`),
    shown.length === 0 ? 'Nobody just now.' : null,
  );
}
