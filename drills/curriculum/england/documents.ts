/** The programmes of study, which print hardly any codes. */
export const NATIONAL = {
  document: 'England, national curriculum',
  code: null,
  status: 'found',
} as const;

/** The non-statutory criteria of 2020, each with a code. */
export const GUIDANCE = {
  document: 'England, ready-to-progress guidance',
  status: 'found',
} as const;
