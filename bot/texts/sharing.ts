import type { ShareRefusal, Sharing } from '../../db/index.ts';
import { SHARE_LIMITS } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** Before a link for one more helper is made. `until` says when the helper's open link ends, null without one. */
export function askToShare(sharing: Sharing, until: string | null): Text {
  const { nickname, helpers, refusal } = sharing;
  const refused = refusal && refusedLine(refusal, name(nickname));
  return lines(
    bold(say('sharing-ask', { name: name(nickname) })),
    refused ?? say('sharing-what', { name: name(nickname), days: SHARE_LIMITS.days }),
    say('sharing-helpers', { name: name(nickname), count: helpers }),
    until !== null && !refused ? say('sharing-open', { until }) : null,
  );
}

function refusedLine(refusal: ShareRefusal, nickname: string): string {
  switch (refusal) {
    case 'sibling':
      return say('sharing-not-sibling');
    case 'helpers':
      return say('sharing-many', { name: nickname, most: SHARE_LIMITS.helpers });
    case 'week':
      return say('sharing-week', { most: SHARE_LIMITS.aWeek });
  }
}

/** Which child somebody else shall help with, when there are several. */
export function askWhomToShare(nicknames: readonly string[]): Text {
  return lines(
    bold(say('sharing-whom')),
    say('sharing-names', { names: listOf(nicknames.map(name)) }),
  );
}

/** The link itself, to be passed on. It stands on a line of its own. */
export function shared(nickname: string, link: string, until: string): Text {
  return lines(
    bold(say('sharing-link', { name: name(nickname) })),
    say('sharing-pass-on'),
    link,
    say('sharing-until', { until }),
  );
}

/** The button that makes the link. */
export function makeShareLabel(): string {
  return say('sharing-make');
}
