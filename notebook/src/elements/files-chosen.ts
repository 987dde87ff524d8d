export type FilesChosen = CustomEvent<readonly File[]>;

/** Asks for files to be opened as cases; whoever draws a picker sends it. */
export const chosen = (files: Iterable<File>): FilesChosen =>
  new CustomEvent('files-chosen', { detail: [...files], bubbles: true });
