/** For a picture, table or page of a week in which there is nothing to draw. */
export const NO_DIGEST_FILE =
  'There is nothing to draw yet: no child of this class has practised in these days.';

/** For a picture that cannot be drawn. */
export const NO_PICTURE =
  'I could not draw that picture. The message and the table say the same; please use those.';
