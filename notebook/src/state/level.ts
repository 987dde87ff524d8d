import { levels, type State } from '@tarebook/rules/engine';

/** The level that an outcome of any topic stands for. */
export function levelOf(
  outcomes: Readonly<Record<string, { readonly id: string }>>,
  id: string,
): State {
  const found = Object.entries(outcomes).find(([, outcome]) => outcome.id === id)?.[0];
  return levels.find((level) => level === found) ?? 'unknown';
}
