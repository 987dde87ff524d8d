import type { Topic } from '../define/shapes';
import type { Value } from '../value/values';

/** A share that may be anything within so much tells nobody anything. */
const widest = 0.49;

/**
 * Whether of a share, by what was told, next to nothing is known: “up to 100 percent full”; nor of a
 * pressure that may be anything from nothing on.
 */
export function isAnyShare(topic: Topic, name: string, value: Value): boolean {
  const entry = topic.formulas[name] ?? topic.facts[name];
  const unit = entry && 'unit' in entry ? entry.unit : undefined;
  if (value.kind !== 'number') return false;
  if (unit === 'psi') return value.lo <= 0 && value.hi > 0;
  return unit === '%' && value.hi - value.lo > widest;
}
