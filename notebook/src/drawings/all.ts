import type { FiguresOf } from './figure';

/** The figures of each topic, read when a case of it is shown. A topic without an entry has none. */
export const figuresOf: Readonly<Record<string, () => Promise<FiguresOf>>> = {
  'tow-fit': async () => (await import('./tow-fit')).rigFigures,
};
