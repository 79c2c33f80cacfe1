/**
 * Whether a nickname may hold a surname: more than one word, and the last one longer than an initial. Only a caution follows
 * from it, because "Little Owl" is a nickname too.
 *
 * @example
 * maybeFullName('Otto Baker'); // true
 * maybeFullName('Otto B'); // false
 */
export function maybeFullName(nickname: string): boolean {
  const words = nickname.split(/[ ,]+/u).filter((word) => /\p{L}/u.test(word));
  const last = words.at(-1) ?? '';
  return words.length > 1 && last.replace(/[^\p{L}]/gu, '').length > 2;
}
