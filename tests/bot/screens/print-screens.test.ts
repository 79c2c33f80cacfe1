import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { PAPER_CHOICE, printScreen } from '../../../bot/screens/print-screens.ts';
import { kingfisher, listed } from '../support/kingfisher.ts';

const children = [
  listed(1, 'Wren'),
  listed(2, 'Otter', 0),
  { ...listed(3, 'Robin'), reachable: 0 },
];
const screen = (paper: 'a4' | 'letter', present = children) =>
  printScreen({ schoolClass: kingfisher, children: present, slips: 7, paper });

describe('what can be printed', () => {
  it('counts those without a helper for slips, and those who get no messages for sheets', () => {
    const { text } = screen('a4').text;
    expect(text).toContain('for 1 child without a helper');
    expect(text).toContain('Links given out before for these children stop working');
    expect(text).toContain('for 2 children whose family gets no messages');
  });

  it('promises no slips when everybody has a helper', () => {
    expect(screen('a4', [listed(1, 'Wren')]).text.text).toContain('every child has a helper');
  });

  it.each(PAPER_CHOICE)('on %s ticks that paper alone and carries it in every button', (paper) => {
    const buttons = screen(paper).buttons.flat();
    expect(buttons.filter(({ label }) => label.startsWith('✓ '))).toHaveLength(1);
    const place = PAPER_CHOICE.indexOf(paper);
    const papers = buttons.slice(2, -1).map(({ data }) => unpack(data));
    expect(papers).toHaveLength(4);
    for (const action of papers) expect(action).toMatchObject({ paper: place });
  });

  it('begins with A4: a class’s own button opens it so', () => {
    expect(PAPER_CHOICE[0]).toBe('a4');
  });

  it('remembers how many slips there were, so that a late tap makes no second set', () => {
    const actions = screen('a4')
      .buttons.flat()
      .map(({ data }) => unpack(data));
    expect(actions).toContainEqual({
      kind: 'printSlips',
      classId: kingfisher.id,
      paper: 0,
      slips: '7',
    });
  });
});
