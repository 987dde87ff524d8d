import { levels } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { mark } from '../elements/marks';
import type { Named } from './matrix-asked';
import { kindsOf, lineOf, type Sieve } from './matrix-sieve';
import { levelWords, margins } from './matrix-words';

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

const numberField = (
  label: string,
  now: number | undefined,
  [step, most]: readonly [number, number],
  set: (value: number | undefined) => void,
): TemplateResult => html`<label>${label}<br /><input type="number" min="1" max=${most} step=${step}
  .value=${now === undefined ? '' : String(now)} @change=${({ target }: Event) => {
    if (!(target instanceof HTMLInputElement)) return;
    const value = target.valueAsNumber;
    set(Number.isFinite(value) && value > 0 ? value : undefined);
  }} /></label>`;

/** By what vehicles are driven; by a trailer’s line, place, axles, length, price and beds. What no row tells is not asked. */
export function sieveFields(
  sieve: Sieve,
  vehicles: readonly Named[],
  trailers: readonly Named[],
  change: Change,
): TemplateResult {
  const told = (all: readonly Named[], column: string): readonly string[] =>
    kindsOf(all.map(({ cells }) => cells[column] ?? ''));
  const chosen = (
    [label, every]: readonly [string, string],
    of: 'group' | 'line' | 'lot' | 'axles',
    all: readonly string[],
  ) =>
    all.length === 0
      ? nothing
      : choice(label, every, sieve[of], all, (value) => change({ ...sieve, [of]: value }));
  const number = (
    label: string,
    of: 'longest' | 'dearest' | 'sleeps',
    column: string,
    ends: readonly [number, number],
  ) =>
    told(trailers, column).length === 0
      ? nothing
      : numberField(label, sieve[of], ends, (value) => change({ ...sieve, [of]: value }));
  return html`${chosen(['Vehicles driven by', 'whatever drives them'], 'group', told(vehicles, 'group'))}
    ${chosen(['Line', 'every line'], 'line', kindsOf(trailers.map(lineOf)))}
    ${chosen(['Where', 'anywhere'], 'lot', told(trailers, 'lot'))}
    ${chosen(['Axles', 'any'], 'axles', told(trailers, 'axles'))}
    ${number('No longer than, ft', 'longest', 'length', [0.25, 60])}
    ${number('No more than, $', 'dearest', 'price', [1, 1_000_000])}
    ${number('Sleeps at least', 'sleeps', 'sleeps', [1, 20])}`;
}

/** How much of every rating is kept free; as the house has it where nobody says. */
export const marginField = (
  now: number | undefined,
  set: (value: number | undefined) => void,
): TemplateResult =>
  choice(
    'Kept free of each rating',
    'as the house has it',
    now === undefined ? '' : `${now} %`,
    margins.map((each) => `${each} %`),
    (value) => set(value === '' ? undefined : Number.parseInt(value, 10)),
  );

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
