import type { ChildTurn } from '../../db/index.ts';
import type { OtherChild } from './means.ts';

/**
 * Whose evening comes next where a helper has several children: the first one after this that nobody has begun, and else the
 * first one before it. None while this one is not over.
 */
export function nextTurn(turns: readonly ChildTurn[], eveningId: string): OtherChild | undefined {
  const own = turns.findIndex((turn) => turn.eveningId === eveningId);
  if (turns[own]?.state !== 'over') return undefined;
  return other([...turns.slice(own + 1), ...turns.slice(0, own)].find(isWaiting));
}

/** The child whose turn comes just before this one's and is not over; none for the first. */
export function turnBefore(turns: readonly ChildTurn[], eveningId: string): OtherChild | undefined {
  const own = turns.findIndex((turn) => turn.eveningId === eveningId);
  return other(turns.slice(0, Math.max(0, own)).findLast(({ state }) => state !== 'over'));
}

/** Whether a brother or sister is being practised with just now. */
export function isAnotherBusy(turns: readonly ChildTurn[], eveningId: string): boolean {
  return turns.some((turn) => turn.eveningId !== eveningId && turn.state === 'under_way');
}

function isWaiting({ state }: ChildTurn): boolean {
  return state === 'waiting';
}

function other(turn: ChildTurn | undefined): OtherChild | undefined {
  return turn && { evening: turn.eveningId, nickname: turn.nickname };
}
