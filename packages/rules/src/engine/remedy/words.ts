import { show, type UnitSystem } from '../../quantity';
import type { Shift } from '../define/changes';
import type { Topic } from '../define/shapes';
import type { FactChange, Told } from './shapes';
import type { Way } from './way';

const toldInWords = (told: Told, units: UnitSystem): string => {
  if (told === null) return 'not said';
  return typeof told === 'string' ? told : show(told, told.unit, units);
};

/** A place on either side of zero: `3 ft ahead of the axles`. */
function onSide(told: Told, sides: NonNullable<Shift['sides']>, units: UnitSystem): string {
  if (told === null || typeof told === 'string') return toldInWords(told, units);
  if (told.lo === 0 && told.hi === 0) return sides.at;
  const ends = [told.lo, told.hi].map(Math.abs);
  const range = { lo: Math.min(...ends), hi: Math.max(...ends) };
  return `${show(range, told.unit, units)} ${told.lo < 0 ? sides.below : sides.above}`;
}

/** What lies between two values. */
function amount(from: Told, to: Told, units: UnitSystem): string {
  if (from === null || typeof from === 'string') return '';
  if (to === null || typeof to === 'string') return show(from, from.unit, units);
  const ends = [from.lo - to.lo, from.hi - to.hi].map(Math.abs);
  return show({ lo: Math.min(...ends), hi: Math.max(...ends) }, from.unit, units);
}

/** The change of a way carried so far, as data. */
export function changeOf(way: Way, x: number): FactChange {
  const { change, row, rowName } = way;
  const column = change.kind === 'less' || change.kind === 'shift' ? change.column : undefined;
  return {
    fact: change.fact,
    ...(row !== undefined && { row: row + 1, rowName }),
    ...(column !== undefined && { column }),
    ...(change.kind === 'scale' && { shown: change.shown }),
    from: way.from,
    to: way.to(x),
  };
}

/** The topic's own sentence for a change. */
export function instruction(way: Way, x: number, units: UnitSystem): string {
  const [from, to] = [way.from, way.to(x)];
  const sides = way.change.kind === 'shift' ? way.change.sides : undefined;
  const fills: Readonly<Record<string, string>> = {
    row: way.rowName,
    from: sides ? onSide(from, sides, units) : toldInWords(from, units),
    to: sides ? onSide(to, sides, units) : toldInWords(to, units),
    amount: amount(from, to, units),
  };
  return way.change.says.replace(/\{(\w+)\}/g, (whole, name: string) => fills[name] ?? whole);
}

/** What a limit or finding is called. */
export function labelOf(topic: Topic, of: string): string {
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  return (kind === 'limit' ? topic.limits[id]?.label : topic.findings[id]?.label) ?? id;
}
