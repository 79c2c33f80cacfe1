/** The standards, each with a code. */
export const COMMON_CORE = { document: 'Common Core', status: 'found' } as const;
