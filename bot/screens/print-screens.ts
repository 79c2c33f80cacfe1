import type { ListedChild, SchoolClass } from '../../db/index.ts';
import type { PaperSize } from '../paper/index.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import { paperName, printScreen as printText } from '../texts/print.ts';
import { back } from './class-screens.ts';
import { button, type Screen } from './screen.ts';

/** The papers, in the order a button counts them. A4 comes first: it is what most schools have. */
export const PAPER_CHOICE: readonly PaperSize[] = ['a4', 'letter'];

/** What can be printed, on the paper chosen. `slips` is how many join slips the class was ever given. */
export function printScreen(input: {
  readonly schoolClass: SchoolClass;
  readonly children: readonly ListedChild[];
  readonly slips: number;
  readonly paper: PaperSize;
}): Screen {
  const { schoolClass, children } = input;
  const { id: classId } = schoolClass;
  const paper = PAPER_CHOICE.indexOf(input.paper);
  const missing = children.filter((child) => child.helpers === 0).length;
  const offline = children.filter((child) => child.reachable === 0).length;
  const papers = PAPER_CHOICE.map((each, index) =>
    button(choiceButton(paperName(each), index === paper), {
      kind: 'print',
      classId,
      paper: index,
    }),
  );
  const slips = String(input.slips);
  return {
    text: printText(schoolClass, { missing, offline }),
    buttons: [
      papers,
      [
        button(BUTTONS.printSlips, { kind: 'printSlips', classId, paper, slips }),
        button(BUTTONS.printSquares, { kind: 'printSquares', classId, paper }),
      ],
      [
        button(BUTTONS.printCards, { kind: 'printCards', classId, paper }),
        button(BUTTONS.printSheets, { kind: 'printSheets', classId, paper }),
      ],
      [back(classId)],
    ],
  };
}
