# Instead of a picture, table or page of a week in which there is nothing.
digest-files-nothing = There is nothing to draw yet: no child of this class has practised in these days.
digest-files-no-picture = I could not draw that picture. The message and the table say the same; please use those.
