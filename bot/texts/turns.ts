import { say } from '../language/index.ts';
import { name } from './words.ts';

/** Leads from one child's evening to a brother's or sister's: `Next: Robin`. */
export function nextChildButton(nickname: string): string {
  return say('turns-next', { child: name(nickname) });
}

/** Whose turn comes first, where a helper has several children on an evening. */
export function turnAfter(nickname: string, first: string): string {
  return say('turns-after', { child: name(nickname), first: name(first) });
}

/** Answers a tap that leads to another child: whose turn it is now, or why nothing new is sent. */
export function turnAnswer(nickname: string, state: 'waiting' | 'under_way' | 'over'): string {
  const child = name(nickname);
  switch (state) {
    case 'waiting':
      return say('turns-now', { child });
    case 'under_way':
      return say('turns-begun', { child });
    case 'over':
      return say('turns-over', { child });
  }
}

/** The answer to a tap with the name of the child it is about, for a helper who may have several. */
export function about(nickname: string, text: string): string {
  return say('turns-about', { child: name(nickname), text });
}
