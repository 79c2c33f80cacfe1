/**
 * Words at the beginning of a line.
 *
 * @example
 * capital('pages 1 to 48'); // 'Pages 1 to 48'
 */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
