import * as rights from '../../../bot/texts/rights.ts';
import type { Text } from '../../../bot/texts/words.ts';
import type { OwnChild } from '../../../db/index.ts';

/** The modules whose texts are here. */
export const RIGHTS_MODULES = [rights] as const;

/** A nickname with letters from right to left. */
const NICKNAME = '👩‍🚀 שרה';
const child = { nickname: NICKNAME, number: 3, classTitle: 'Heron class 🐦', isErasing: true };
const own: readonly OwnChild[] = [
  { id: 'a', nickname: NICKNAME, erasing: 'no' },
  { id: 'b', nickname: 'Otter', erasing: 'other' },
];

/** What each of these functions says, by its name. */
export const rightsTexts = (): Readonly<Record<string, readonly (Text | string)[]>> => ({
  erasingForHelper: [rights.erasingForHelper(child)],
  keptForHelper: [rights.keptForHelper(child)],
  erasingForTeacher: [rights.erasingForTeacher(child)],
  keptForTeacher: [rights.keptForTeacher(child)],
  dataOf: [rights.dataOf(NICKNAME)],
  chooseToErase: [rights.chooseToErase(own)],
  askToErase: [rights.askToErase(NICKNAME)],
  erasing: [rights.erasing(NICKNAME)],
  erasingByAnother: [rights.erasingByAnother(NICKNAME)],
  keptAfterAll: [rights.keptAfterAll(NICKNAME)],
  notErased: [rights.notErased()],
  nothingHeld: [rights.nothingHeld()],
  erasedByOperator: [true, false].map((done) => rights.erasedByOperator(done, 'an-id')),
});
