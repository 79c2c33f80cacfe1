# Stands where a child's nickname would.
preview-name = Preview
preview-draft = Preview: what a family gets once you put it in use. Nothing you tap here is kept.
preview-plan = Preview: what a family gets on the next evening. Nothing you tap here is kept.
preview-over = The preview is over. Nothing of it was kept.
