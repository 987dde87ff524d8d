import { levels } from '@tarebook/rules/engine';
import { html, type TemplateResult } from 'lit';
import { mark } from '../elements/marks';
import type { Named } from './matrix-asked';
import { kindsOf, lineOf, type Sieve } from './matrix-sieve';
import { levelWords } from './matrix-words';

type Change = (sieve: Sieve) => void;

const choice = (
  label: string,
  every: string,
  now: string,
  all: readonly string[],
  set: (value: string) => void,
): TemplateResult => html`<label>${label}<br /><select @change=${({ target }: Event) => {
  if (target instanceof HTMLSelectElement) set(target.value);
}}>
  <option value="" ?selected=${now === ''}>${every}</option>
  ${all.map((each) => html`<option value=${each} ?selected=${each === now}>${each}</option>`)}</select></label>`;

export function slider(
  label: string,
  [least, value, most]: readonly [number, number, number],
  step: number,
  said: string,
  set: (value: number) => void,
): TemplateResult {
  const moved = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement) set(Number(target.value));
  };
  return html`<label>${label}: <span class="num">${said}</span><br />
      <input type="range" min=${least} max=${most} step=${step} .value=${String(value)} @input=${moved} /></label>`;
}

/** By what vehicles are driven, by line, by length. */
export function sieveFields(
  sieve: Sieve,
  vehicles: readonly Named[],
  trailers: readonly Named[],
  change: Change,
): TemplateResult {
  const groups = kindsOf(vehicles.map(({ cells }) => cells.group ?? ''));
  const lengthSet = ({ target }: Event): void => {
    if (!(target instanceof HTMLInputElement)) return;
    const feet = target.valueAsNumber;
    change({ ...sieve, longest: Number.isFinite(feet) && feet > 0 ? feet : undefined });
  };
  return html`${choice('Vehicles driven by', 'whatever drives them', sieve.group, groups, (group) => change({ ...sieve, group }))}
    ${choice('Line', 'every line', sieve.line, kindsOf(trailers.map(lineOf)), (line) => change({ ...sieve, line }))}
    <label>No longer than, ft<br /><input type="number" min="1" max="60" step="0.25" .value=${sieve.longest === undefined ? '' : String(sieve.longest)} @change=${lengthSet} /></label>`;
}

/** What each shape means and how many there are; pressed it is shown, let go it is left out. */
export function levelKeys(sieve: Sieve, counts: readonly number[], change: Change): TemplateResult {
  const turned = (at: number): ReadonlySet<number> => {
    const without = new Set(sieve.without);
    if (!without.delete(at)) without.add(at);
    return without;
  };
  return html`<div class="matrix-key" role="group" aria-label="Verdicts that are shown">${levels.map(
    (
      level,
      at,
    ) => html`<button class="level-${level}" aria-pressed=${sieve.without.has(at) ? 'false' : 'true'}
      @click=${() => change({ ...sieve, without: turned(at) })}><span class="word-of">${mark(level)}${levelWords[level]}</span> <span class="num">${counts[at] ?? 0}</span></button>`,
  )}</div>`;
}
