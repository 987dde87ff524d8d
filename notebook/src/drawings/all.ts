import type { FiguresOf } from './figure';

const gas = async (): Promise<FiguresOf> => (await import('./gas-supply')).gasFigures;

/** The figures of each topic, read when a case of it is shown. A topic without an entry has none. */
export const figuresOf: Readonly<Record<string, () => Promise<FiguresOf>>> = {
  'cold-weather': gas,
  'electric-tow-range': async () => (await import('./electric-tow-range')).routeFigures,
  'gas-supply': gas,
  'house-battery': async () => (await import('./house-battery')).batteryFigures,
  'off-grid-stay': async () => (await import('./off-grid-stay')).stayFigures,
  'tow-fit': async () => (await import('./tow-fit')).rigFigures,
};
