import type { OwnChild } from '../../db/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/rights.ts';
import { button, type Screen } from './screen.ts';

/** Children to choose from on one screen; a helper with more sees the first ones and erases those first. */
const MOST_CHILDREN = 9;

/** Where a child's erasure stands, and what can be done next; with several children, which one it is about. */
export function eraseScreen(children: readonly OwnChild[]): Screen {
  const [only, ...others] = children;
  if (only && others.length === 0) return oneChild(only);
  return {
    text: texts.chooseToErase(children),
    buttons: [
      ...children
        .slice(0, MOST_CHILDREN)
        .map(({ id, nickname }) => [button(nickname, { kind: 'eraseAsk', child: id })]),
      [button(BUTTONS.eraseNot, { kind: 'eraseNot' })],
    ],
  };
}

function oneChild({ id: child, nickname, erasing }: OwnChild): Screen {
  if (erasing === 'other') return { text: texts.erasingByAnother(nickname), buttons: [] };
  if (erasing === 'mine') {
    return {
      text: texts.erasing(nickname),
      buttons: [[button(BUTTONS.undo, { kind: 'eraseUndo', child })]],
    };
  }
  return {
    text: texts.askToErase(nickname),
    buttons: [
      [button(BUTTONS.erase, { kind: 'erase', child })],
      [button(BUTTONS.eraseNot, { kind: 'eraseNot' })],
    ],
  };
}

/** After the wish was taken back. */
export function keptScreen(nickname: string): Screen {
  return { text: texts.keptAfterAll(nickname), buttons: [] };
}

/** After deciding against it. */
export function notErasedScreen(): Screen {
  return { text: texts.notErased(), buttons: [] };
}
