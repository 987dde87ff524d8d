import type { Ends, LimitAnswer } from '@tarebook/rules/engine';
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
  const over = headroom.hi < 0;
  const ends = over ? { ...headroom, lo: -headroom.hi, hi: -headroom.lo } : headroom;
  if (!Number.isFinite(ends.lo) || !Number.isFinite(ends.hi)) return stateWords[state];
  if (ends.lo < 0 && ends.hi > 0) {
    const [most, left] = [-ends.lo, ends.hi].map((end) => ({ ...ends, lo: end, hi: end }));
    if (most && left) return html`${margin(most)} over to ${margin(left)} left`;
  }
  return html`${margin(ends)} ${over ? 'over' : 'left'}`;
}
