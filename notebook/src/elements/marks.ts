import type { State } from '@tarebook/rules/engine';
import { type SVGTemplateResult, svg } from 'lit';

/** Each level has a shape of its own, so that color is never needed to tell them apart. */
const paths: Readonly<Record<State, string>> = {
  ok: 'M4 21l10 11L36 8',
  care: 'M20 4 37 36H3ZM20 16v9m0 4v3',
  stop: 'M12 4h16l8 8v16l-8 8H12l-8-8V12ZM13 13l14 14m0-14L13 27',
  if: 'M20 3 37 20 20 37 3 20ZM20 12v10m0 4v3',
  unknown: 'M20 4a16 16 0 1 0 .01 0ZM15 16q0-6 5-6t5 5q0 3-5 6v3m0 4v2',
  'not-asked': 'M8 20h24',
};

export const stateWords: Readonly<Record<State, string>> = {
  ok: 'within',
  care: 'with care',
  stop: 'over',
  if: 'to be made sure of',
  unknown: 'cannot say',
  'not-asked': 'not asked',
};

export function mark(state: State): SVGTemplateResult {
  return svg`<svg viewBox="0 0 40 40" aria-hidden="true"><path d=${paths[state]} fill="none" stroke="currentColor" stroke-width="3.5" stroke-linejoin="round" stroke-linecap="round"/></svg>`;
}
