/** Most children a class may have. */
export const MAX_CHILDREN = 60;
