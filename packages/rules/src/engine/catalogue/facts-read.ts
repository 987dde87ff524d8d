import type { Catalogue } from '../define/catalogue';

/** The facts that a catalogue reads. */
export const factsRead = ({ model, year, wishes }: Catalogue): readonly string[] => [
  model,
  year,
  ...Object.values(wishes),
];
