const carriesFiles = ({ dataTransfer }: DragEvent): boolean =>
  dataTransfer?.types.includes('Files') ?? false;

type Heard = {
  /** Files hang over the page, or do so no longer. */
  readonly hover: (over: boolean) => void;
  readonly open: (files: readonly File[]) => void;
};

/** Hears files dropped anywhere on the page, or chosen in any picker, until `signal` ends it. */
export function hearFiles({ hover, open }: Heard, signal: AbortSignal): void {
  const hear = (type: 'dragover' | 'dragleave' | 'drop', does: (event: DragEvent) => void): void =>
    addEventListener(type, does, { signal });
  hear('dragover', (event) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    hover(true);
  });
  hear('dragleave', ({ relatedTarget }) => {
    if (relatedTarget === null) hover(false);
  });
  hear('drop', (event) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    hover(false);
    open([...(event.dataTransfer?.files ?? [])]);
  });
  const chosen = (event: Event): void => {
    if (event instanceof CustomEvent && Array.isArray(event.detail)) {
      open(event.detail.filter((each): each is File => each instanceof File));
    }
  };
  document.addEventListener('files-chosen', chosen, { signal });
}
