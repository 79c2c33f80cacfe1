/**
 * What a child sees on one card, before anybody draws it.
 *
 * `text` is a sum as written on a board (`3 + 4`, `9 − 4`, `3 × 5`, `7 + ? = 10`), its words in the class's language
 * (`double 7`, `helfte van 14`), or a number word alone; the minus sign is U+2212, the times sign U+00D7. `clock` is an analogue face: `hour` 1 to 12, `minute` 0 to 59.
 *
 * @example
 * const face: CardFace = { kind: 'clock', hour: 3, minute: 30 };
 */
export type CardFace =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'clock'; readonly hour: number; readonly minute: number };
