import type { FiguresOf } from './figure';

/** The figures of each topic, read when a case of it is shown. A topic without an entry has none. */
export const figuresOf: Readonly<Record<string, () => Promise<FiguresOf>>> = {
  'house-battery': async () => (await import('./house-battery')).batteryFigures,
  'tow-fit': async () => (await import('./tow-fit')).rigFigures,
};
