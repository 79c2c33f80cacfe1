/**
 * The colours of every picture: warm paper, dark ink, one accent and its tint, soft lines.
 *
 * `ink`, `softInk` and `accent` carry text on `paper`, `card` and `tint` at 4.5:1 or more. `line` is a
 * decorative rule and never the only bearer of a meaning.
 */
export const PALETTE = {
  paper: '#faf6ee',
  card: '#fffdf9',
  ink: '#2a2420',
  softInk: '#62574c',
  accent: '#945600',
  tint: '#f9e4b7',
  line: '#ddd2c0',
} as const;

/** One of the palette's colours, as `#rrggbb`. */
export type Colour = (typeof PALETTE)[keyof typeof PALETTE];
