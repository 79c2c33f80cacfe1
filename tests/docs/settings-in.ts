import { settingsTable } from '../../bot/roots/settings.ts';

const BEGIN = '<!-- settings: npm run settings writes this table from bot/roots/settings.ts -->';
const END = '<!-- settings end -->';

/** A page with the table of settings as it should be, between its two marks. */
export function withSettings(page: string): string {
  const [before, rest] = page.split(BEGIN);
  const after = rest?.split(END)[1];
  if (before === undefined || after === undefined) throw new Error('the page has no marks');
  return `${before}${BEGIN}\n\n${settingsTable()}\n\n${END}${after}`;
}
