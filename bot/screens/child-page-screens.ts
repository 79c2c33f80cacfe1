import type { FactId } from '../../drills/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { type ChildPageInput, childFacts, childPage } from '../texts/child-page.ts';
import { button, type Screen } from './screen.ts';

/** A child in its class, by its number there. */
export interface ChildOf {
  readonly classId: string;
  readonly number: number;
}

/** One child's page: its own past and the way to what can be made of it. `listPage` is the page of the list it stands on. */
export function childPageScreen(of: ChildOf, input: ChildPageInput, listPage: number): Screen {
  return {
    text: childPage(input),
    buttons: [
      [
        button(BUTTONS.sayTogether, { kind: 'childFacts', ...of }),
        button(BUTTONS.childPicture, { kind: 'childPicture', ...of }),
      ],
      [
        button(BUTTONS.report, { kind: 'childReport', ...of, span: 0, paper: 0 }),
        button(BUTTONS.childMore, { kind: 'child', ...of }),
      ],
      [button(BUTTONS.back, { kind: 'childPages', classId: of.classId, page: listPage })],
    ],
  };
}

/** Facts to say aloud with one child. */
export function childFactsScreen(
  of: ChildOf,
  child: { readonly nickname: string },
  facts: readonly FactId[],
): Screen {
  return {
    text: childFacts({ ...child, number: of.number }, facts),
    buttons: [[button(BUTTONS.back, { kind: 'childPage', ...of })]],
  };
}
