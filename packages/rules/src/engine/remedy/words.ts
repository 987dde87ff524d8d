import type { Shift } from '../define/changes';
import type { Topic } from '../define/shapes';
import { message } from '../words/message';
import { nounOr, own, type Quantity, type Sayable, type Text, text } from '../words/value';
import type { FactChange, Told } from './shapes';
import type { Way } from './way';

const exactly = (lo: number, hi: number, unit: string): Quantity => ({
  lo,
  hi,
  unit,
  style: 'exact',
});

function toldSaid(told: Told): Sayable {
  if (told === null) return message('not-said', {});
  if (typeof told !== 'string') return exactly(told.lo, told.hi, told.unit);
  return told === 'unknown' ? message('not-known', {}) : { option: told };
}

/** A place on either side of zero: `3 ft ahead of the axles`. */
function onSide(told: Told, sides: NonNullable<Shift['sides']>): Sayable {
  if (told === null || typeof told === 'string') return toldSaid(told);
  if (told.lo === 0 && told.hi === 0) return text(sides.at);
  const [a, b] = [Math.abs(told.lo), Math.abs(told.hi)];
  const far = exactly(Math.min(a, b), Math.max(a, b), told.unit);
  return message('on-side', { far, side: text(told.lo < 0 ? sides.below : sides.above) });
}

/** What lies between two values. */
function amount(from: Told, to: Told): Sayable | undefined {
  if (from === null || typeof from === 'string') return undefined;
  if (to === null || typeof to === 'string') return toldSaid(from);
  const [a, b] = [Math.abs(from.lo - to.lo), Math.abs(from.hi - to.hi)];
  return exactly(Math.min(a, b), Math.max(a, b), from.unit);
}

/** The change of a way carried so far, as data. */
export function changeOf(way: Way, x: number): FactChange {
  const { change, row, rowName } = way;
  const column = change.kind === 'less' || change.kind === 'shift' ? change.column : undefined;
  return {
    fact: change.fact,
    ...(row !== undefined && { row: row + 1 }),
    ...(rowName !== '' && { rowName }),
    ...(column !== undefined && { column }),
    ...(change.kind === 'scale' && { shown: change.shown }),
    from: way.from,
    to: way.to(x),
  };
}

/** The topic's own sentence for a change. */
export function instruction(way: Way, x: number): Text {
  const [from, to] = [way.from, way.to(x)];
  const sides = way.change.kind === 'shift' ? way.change.sides : undefined;
  const row =
    way.row !== undefined && way.rowName === ''
      ? message('row', { row: way.row + 1 })
      : own(way.rowName);
  return text(way.change.says, {
    row,
    from: sides ? onSide(from, sides) : toldSaid(from),
    to: sides ? onSide(to, sides) : toldSaid(to),
    amount: amount(from, to) ?? own(''),
  });
}

/** What a limit or finding is called inside a sentence. */
export function nameOf(topic: Topic, of: string): Sayable {
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  return nounOr(kind === 'limit' ? topic.limits[id] : topic.findings[id], id);
}
