import type { HeldData } from '../../db/index.ts';
import { isLanguage, LANGUAGES } from '../../drills/index.ts';
import { cell } from '../digest/digest-table.ts';
import { say } from '../language/index.ts';
import { heldCode } from '../texts/held-table.ts';
import { eveningRows } from './held-evening-rows.ts';
import { paceRows } from './held-pace-rows.ts';
import { type HeldRow, sinceRow } from './held-row.ts';

/** Tells spreadsheet programs that the bytes are UTF-8. */
const BYTE_ORDER_MARK = '\ufeff';

/**
 * Everything kept about a child as a table that opens in a spreadsheet: a row a thing, with what it is, when, its name, its
 * value and more, in the reader's language. Comma-separated values after RFC 4180, as the digest's table.
 */
export function heldTable(data: HeldData): string {
  const heads = ['what', 'when', 'name', 'value', 'more'] as const;
  const rows: readonly (readonly (string | number)[])[] = [
    heads.map((head) => say(`held-table-${head}`)),
    ...aboutChild(data),
    ...aboutBelongings(data),
    ...aboutYou(data),
    ...aboutMessages(data),
    ...data.evenings.flatMap(eveningRows),
    ...data.memory.map((known): HeldRow => {
      const { fact, asked, right, streak, model, lastDay } = known;
      const state = known.state.join(' ');
      const more = say('held-table-memory-more', { right, asked, streak, model, state });
      return [say('held-table-memory'), lastDay ?? '', fact, asked, more];
    }),
  ];
  return BYTE_ORDER_MARK + rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function aboutChild({ child, madeAt }: HeldData): HeldRow[] {
  const what = say('held-table-child');
  return [
    [what, child.addedAt, say('digest-table-nickname'), child.nickname, ''],
    [what, child.addedAt, say('digest-table-number'), child.number, ''],
    [what, madeAt, say('held-table-class'), child.classTitle, child.zone],
    [what, madeAt, say('held-table-evening-time'), child.eveningTime, ''],
    ...sinceRow(what, child.archivedAt, say('held-table-left')),
    ...sinceRow(what, child.erasingSince, say('held-table-erasing')),
    ...aboutAdjustment(child),
    ...paceRows(child),
  ];
}

function aboutAdjustment({ adjustment }: HeldData['child']): HeldRow[] {
  if (adjustment === null) return [];
  const { since, steps, fewer, untimed } = adjustment;
  const more = () => {
    if (fewer && untimed) return say('held-table-fewer-untimed');
    if (fewer) return say('held-table-fewer');
    return untimed ? say('held-table-untimed') : '';
  };
  return [[say('held-table-adjustment'), since, say('held-table-steps'), steps, more()]];
}

function aboutBelongings({ slips, books, places }: HeldData): HeldRow[] {
  return [
    ...slips.map(({ issuedAt, usesLeft, expiresAt: at, shared }): HeldRow => {
      const more = shared
        ? say('held-table-until-shared', { at })
        : say('held-table-until', { at });
      return [say('held-table-slip'), issuedAt, say('held-table-uses-left'), usesLeft, more];
    }),
    ...books.map(({ title, pagesADay, firstPage, lastPage }): HeldRow => {
      const pages = say('words-pages', { from: firstPage, to: lastPage });
      return [say('held-table-own-book'), '', title, pagesADay, pages];
    }),
    ...places.map(
      (place): HeldRow => [say('held-table-place'), place.saidAt, place.book, place.page, ''],
    ),
  ];
}

function aboutYou({ you }: HeldData): HeldRow[] {
  const what = say('held-table-you');
  const { joinedAt, relation, pictureMonth, display } = you;
  const switches = ['bigger', 'noTiming', 'quiet', 'clockAid', 'monthly'] as const;
  return [
    [what, joinedAt, say('held-table-chat'), you.chatId, ''],
    [what, joinedAt, say('held-table-language'), languageNamed(you.language), ''],
    [what, joinedAt, say('held-table-way'), heldCode(you.way), ''],
    ...switches.map((each): HeldRow => {
      const setting = say('held-table-setting', { setting: say(`settings-switch-${each}`) });
      return [what, joinedAt, setting, say(display[each] ? 'held-table-on' : 'held-table-off'), ''];
    }),
    ...(relation === null
      ? []
      : [[what, joinedAt, say('held-table-relation'), heldCode(relation), ''] as const]),
    ...sinceRow(what, pictureMonth, say('held-table-month-picture')),
    ...you.dataUsed.map(
      ({ month, bytes }): HeldRow => [
        what,
        month,
        say('held-table-data'),
        bytes,
        say('held-table-bytes'),
      ],
    ),
  ];
}

/** A language under its own name for itself. */
function languageNamed(tag: string): string {
  return isLanguage(tag) ? LANGUAGES[tag] : tag;
}

function aboutMessages({ you }: HeldData): HeldRow[] {
  return [
    ...you.agreements.map(({ agreedAt, textVersion, language, withdrawnAt: at }): HeldRow => {
      const more = at === null ? '' : say('held-table-withdrawn', { at });
      return [say('held-table-agreement'), agreedAt, textVersion, language, more];
    }),
    ...you.messages.map(({ kind, day, status, sentAt }): HeldRow => {
      return [say('held-table-message'), sentAt ?? day, heldCode(kind), heldCode(status), ''];
    }),
  ];
}
