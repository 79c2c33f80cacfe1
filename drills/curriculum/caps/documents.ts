/** The curriculum statement; not read itself. */
export const CAPS_2011 = { document: 'South Africa, CAPS' } as const;

/** The teaching plan, which prints no codes. */
export const PLAN_2022 = {
  document: 'South Africa, annual teaching plan 2022',
  code: null,
  status: 'found',
} as const;

/** Of every grade; read for Grade 2. Its range follows the adding and taking away of the grade. */
export const DOUBLING = {
  ...CAPS_2011,
  text: 'doubling and halving is a named calculation strategy in every grade',
  code: '1.16',
} as const;
