/** What a reader left open or shut, kept on this device, or in this window where it refuses. */
const place = 'tarebook.folds';

function read(): Record<string, boolean> {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(place) ?? '{}');
    if (typeof value !== 'object' || value === null) return {};
    const entries = Object.entries(value).filter(
      (each): each is [string, boolean] => typeof each[1] === 'boolean',
    );
    return Object.fromEntries(entries);
  } catch {
    return {};
  }
}

let folds: Readonly<Record<string, boolean>> | undefined;

/** Whether a fold was left open; `otherwise` where nobody has touched it. */
export function isLeftOpen(name: string, otherwise: boolean): boolean {
  folds ??= read();
  return (Object.hasOwn(folds, name) ? folds[name] : undefined) ?? otherwise;
}

export function leaveOpen(name: string, open: boolean): void {
  folds = { ...(folds ?? read()), [name]: open };
  try {
    localStorage.setItem(place, JSON.stringify(folds));
  } catch {
    // It is remembered in this window alone.
  }
}
