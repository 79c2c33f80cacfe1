import { expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import * as buttons from '../../../bot/texts/buttons.ts';

const { BUTTONS } = buttons;

it('a label is in the language of whoever reads it, whenever it is read', () => {
  expect(BUTTONS.notToday).toBe('Not today');
  expect(readIn('de', () => BUTTONS.notToday)).toBe('Heute nicht');
  expect(BUTTONS.notToday).toBe('Not today');
});

it('labels can be listed, but not replaced', () => {
  expect(Object.values(BUTTONS)).toContain('Not today');
  expect(() => Object.assign(BUTTONS, { notToday: 'Never' })).toThrow(TypeError);
});

it('a label that holds a value has it in every language', () => {
  const said = () => [
    buttons.timeButton('evening', '17:30'),
    buttons.gradeButton('Year 2'),
    buttons.amountButton(-5, 'cards'),
  ];
  expect(said()).toEqual(['Drill 17:30', 'Usual steps: Year 2', '− 5 (cards)']);
  expect(readIn('fr', said)).toEqual([
    'Séance 17:30',
    'Étapes habituelles\u202f: Year 2',
    '− 5 (cartes)',
  ]);
});
