import { oneLine } from './one-line.ts';

/**
 * What a teacher wrote to the families: its lines kept, without hidden characters, double spaces and more than one empty line
 * in a row; empty when there is nothing to see.
 *
 * @example
 * greetingText(' Dear all,\r\n\r\n\r\nhave a good  week! '); // 'Dear all,\n\nhave a good week!'
 */
export function greetingText(text: string): string {
  return text
    .split(/\r\n|[\r\n\u2028\u2029]/u)
    .map(oneLine)
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();
}
