/** A document's texts, one after another, so that every change can be taken back. */
export type History = {
  readonly texts: readonly string[];
  readonly at: number;
  /** What the last change was made to, and when; typing in one field is one change. */
  readonly last?: { readonly field: string; readonly time: number };
};

const together = 1500;
const most = 500;

export const begin = (text: string): History => ({ texts: [text], at: 0 });

export const current = (history: History): string => history.texts[history.at] ?? '';

/** Adds a text after the current one; what had been taken back is dropped. */
export function change(history: History, text: string, field: string, time: number): History {
  if (text === current(history)) return history;
  const { last, at, texts } = history;
  const same = last?.field === field && time - last.time < together && at > 0;
  const kept = texts.slice(0, same ? at : at + 1).slice(-most);
  return { texts: [...kept, text], at: kept.length, last: { field, time } };
}

export const canUndo = (history: History): boolean => history.at > 0;
export const canRedo = (history: History): boolean => history.at < history.texts.length - 1;

export function undo({ texts, at }: History): History {
  return { texts, at: Math.max(0, at - 1) };
}

export function redo({ texts, at }: History): History {
  return { texts, at: Math.min(texts.length - 1, at + 1) };
}
