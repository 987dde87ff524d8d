import {
  atMost,
  type Ends,
  type LimitAnswer,
  overOf,
  leftOf as roomLeft,
} from '@tarebook/rules/engine';
import { marginParts, showParts, type UnitSystem } from '@tarebook/rules/quantity';
import { html, type TemplateResult } from 'lit';
import { stateWords } from './marks';

/** A number in tabular figures with its unit lighter. */
export function figure(ends: Ends, system: UnitSystem, parts = showParts): TemplateResult {
  const { number, unit } = parts(ends, ends.unit, system);
  return html`<span class="num">${number}</span>${unit ? html`<span class="unit">${unit}</span>` : ''}`;
}

/** What is left below a limit, or by how much it is over; the state's word where nobody knows. */
export function leftOf(limit: LimitAnswer, system: UnitSystem): TemplateResult | string {
  const { headroom, state } = limit;
  const margin = (of: Ends) => figure(of, system, marginParts);
  const { lo, hi } = headroom;
  if (!Number.isFinite(lo) || !Number.isFinite(hi)) return stateWords[state];
  if (hi < 0) return html`${margin(overOf(limit))} over`;
  if (lo >= 0 || hi === 0) return html`${margin(roomLeft(limit))} left`;
  return html`${margin(atMost(overOf(limit)))} over to ${margin(atMost(roomLeft(limit)))} left`;
}
