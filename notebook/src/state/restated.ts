import type { Answer, Ends } from '@tarebook/rules/engine';
import {
  type Interval,
  readQuantity,
  show,
  showMargin,
  shownUnit,
  showRound,
  type UnitSystem,
  wasMisread,
} from '@tarebook/rules/quantity';

const negated = ({ lo, hi, unit }: Ends): Ends => ({ lo: -hi, hi: -lo, unit });

/** Every range of an answer that its sentences may quote. */
function endsOf(answer: Answer): readonly Ends[] {
  const limits = answer.limits.flatMap(({ used, limit, headroom, careAt }) => [
    used,
    limit,
    headroom,
    negated(headroom),
    { ...headroom, lo: Math.max(0, headroom.lo) },
    ...(careAt ? [careAt] : []),
  ]);
  const steps = Object.values(answer.trace.steps).flatMap(({ ends }) => (ends ? [ends] : []));
  const tips = answer.missing.flatMap(({ tips: at }) => (at && typeof at === 'object' ? [at] : []));
  return [...limits, ...Object.values(answer.values), ...steps, ...tips];
}

const before = new WeakMap<Answer, ReadonlyMap<string, string>>();

/** What each range of the answer is called in US units, and what that is in metric ones. */
function exact(answer: Answer): ReadonlyMap<string, string> {
  const known = before.get(answer);
  if (known) return known;
  const found = new Map<string, string>();
  before.set(answer, found);
  for (const ends of endsOf(answer)) {
    for (const say of [show, showRound, showMargin]) {
      const us = say(ends, ends.unit);
      if (!found.has(us)) found.set(us, say(ends, ends.unit, 'metric'));
    }
  }
  return found;
}

const fraction = '[−-]?(?:\\d+ )?\\d{1,2}/16|[−-]?\\d*[⅛⅜⅝⅞]';
const number = `${fraction}|[−-]?\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|[−-]?\\d+(?:\\.\\d+)?`;
const units = 'lb/gal|lb·ft|lb|gal|ft²|ft|mi|mph|psi|°F|in(?! (?:the|a|an|this|that|its|any)\\b)';
const quantity = new RegExp(
  `(?<![\\w.,/])(?:${number})(?:–(?:${number}))? (?:${units})(?![\\w²·/])(?: or (?:more|less)\\b)?`,
  'g',
);

/** A quantity that stands in words but in no range of the answer, such as “over 3,000 lb”. */
function roughly(text: string): string {
  const open = / or (more|less)$/.exec(text)?.[1];
  const written = readQuantity(text.replace(/ or (more|less)$/, ''));
  if (wasMisread(written) || !written.unit) return text;
  const range: Interval = {
    lo: open === 'less' ? -Infinity : written.from,
    hi: open === 'more' ? Infinity : written.to,
  };
  const { symbol } = written.unit;
  return shownUnit(symbol, 'metric') === symbol ? text : show(range, symbol, 'metric');
}

/**
 * Words that the answer says in US units, in the units chosen. Figures of the answer itself are
 * converted from their full value, all others from what is written.
 */
export function restating(answer: Answer, system: UnitSystem): (text: string) => string {
  if (system === 'us') return (text) => text;
  const known = exact(answer);
  return (text) => text.replace(quantity, (found) => known.get(found) ?? roughly(found));
}
