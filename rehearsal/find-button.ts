import type { ChatMessage } from './phone-api/views.ts';

export interface FoundButton {
  readonly id: number;
  readonly text: string;
  readonly data: string;
}

function labels(messages: readonly ChatMessage[]): string {
  const shown = messages.flatMap(({ buttons }) => buttons.flat()).map(({ text }) => `"${text}"`);
  return shown.length === 0 ? 'There are no buttons.' : `There are: ${shown.join(', ')}.`;
}

/**
 * The button whose text contains `label`, on the newest message that has one; an equal text wins over a containing one.
 * Messages come oldest first. Throws an Error naming the buttons there are.
 */
export function findButton(messages: readonly ChatMessage[], label: string): FoundButton {
  const newestFirst = [...messages].reverse();
  const matches = newestFirst.flatMap(({ id, buttons }) =>
    buttons
      .flat()
      .flatMap(({ text, data }) =>
        data !== undefined && text.includes(label) ? [{ id, text, data }] : [],
      ),
  );
  const inNewest = matches.filter(({ id }) => id === matches[0]?.id);
  const match = inNewest.find(({ text }) => text === label) ?? inNewest[0];
  if (match === undefined) throw new Error(`No button says "${label}". ${labels(newestFirst)}`);
  return match;
}
