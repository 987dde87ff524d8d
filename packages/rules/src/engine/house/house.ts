import {
  convert,
  readQuantity,
  rounded,
  sameDimension,
  show,
  type Unit,
  unitOf,
  wasMisread,
} from '../../quantity';
import { holdingOn } from '../answer/parameters';
import { refuseTopic } from '../check/asked';
import { isPlain } from '../check/given';
import { sayProblem } from '../check/messages';
import { nearest } from '../check/near';
import { InputError, type Problem } from '../check/problem';
import { likewise } from '../define/looked-at';
import type { Parameter, ParameterValue, Topic } from '../define/shapes';
import { layerProblems } from './layer';
import { ratingRaised } from './loosens';
import type { HouseLayer, HouseValue } from './shapes';

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text));

const shown = (lo: number, hi: number, unit: string): string =>
  unit === '1' ? (lo === hi ? `${lo}` : `${lo}–${hi}`) : show({ lo, hi }, unit);

const isProblem = (value: object | number): value is Problem =>
  typeof value === 'object' && 'code' in value;

/** The value in the parameter's own unit, or why it is none. */
function readValue(id: string, parameter: Parameter, given: HouseValue): number | Problem {
  const { unit, range } = parameter;
  const text =
    typeof given.value === 'string' ? given.value : `${given.value} ${given.unit ?? ''}`.trim();
  const own: Unit = unitOf(unit === '' ? '1' : unit);
  const wanted = `one value${unit === '' || unit === '1' ? '' : ' with its unit'}, such as “${shown(5, 5, unit)}”`;
  const bounds = range && { least: range[0], most: range[1] };
  const place = { fact: id, wanted, unit, ...bounds };
  const read = readQuantity(text);
  if (wasMisread(read)) return { ...place, code: read.code, found: read.found };
  if (read.from !== read.to || read.within !== undefined) {
    return { ...place, code: 'not-one-value', found: text };
  }
  if (!read.unit && own.symbol !== '1') return { ...place, code: 'no-unit', found: text };
  const from = read.unit ?? own;
  if (!sameDimension(from.dimension, own.dimension)) {
    return { ...place, code: 'wrong-unit', found: text, wanted: `in ${unit}; write ${wanted}` };
  }
  return rounded(convert(read.from, from, own));
}

function notToBeMoved(topic: Topic, id: string): Problem | undefined {
  const options = Object.entries(topic.parameters).flatMap(([each, { range }]) =>
    range ? [each] : [],
  );
  const place = { fact: id, found: id, wanted: options.join(', ') || 'nothing here', options };
  if (Object.hasOwn(topic.facts, id)) return { ...place, code: 'not-a-parameter' };
  if (!Object.hasOwn(topic.parameters, id)) {
    const near = nearest(id, options);
    return { ...place, code: 'no-such-parameter', wanted: topic.id, ...(near && { near }) };
  }
  return topic.parameters[id]?.range ? undefined : { ...place, code: 'not-a-house-choice' };
}

/** The values of a parameter with the dealer's in their place from a day on. */
function layered(
  parameter: Parameter,
  name: string,
  given: HouseValue,
  value: number,
): readonly ParameterValue[] {
  const { reason, from } = given;
  const own = (entry: ParameterValue, begins: string): ParameterValue => ({
    ...entry,
    from: begins,
    value,
    house: { name, reason, instead: entry.value },
  });
  if (from === undefined) return parameter.values.map((entry) => own(entry, entry.from));
  const held = holdingOn(parameter, from);
  const cut = held && held.from < from ? [own(held, from)] : [];
  return [
    ...parameter.values.map((entry) => (entry.from < from ? entry : own(entry, entry.from))),
    ...cut,
  ];
}

function moved(topic: Topic, name: string, id: string, given: HouseValue): Parameter | Problem {
  const refused = notToBeMoved(topic, id);
  const parameter = topic.parameters[id];
  if (refused) return refused;
  if (!parameter?.range) throw new Error(`“${id}” has no range.`);
  const value = readValue(id, parameter, given);
  if (typeof value !== 'number') return value;
  const { unit, range } = parameter;
  const [least, most] = range;
  const place = { fact: id, unit, least, most, found: shown(value, value, unit) };
  if (value < least || value > most) {
    return { ...place, code: 'beyond-house-range', wanted: shown(least, most, unit) };
  }
  if (given.reason.trim() === '') {
    const wanted = 'a sentence why the house keeps it so';
    return { fact: id, code: 'no-reason', found: '', wanted };
  }
  if (given.from !== undefined && !isDay(given.from)) {
    return { fact: id, code: 'not-a-day', found: given.from, wanted: 'a day such as 2026-01-31' };
  }
  for (const entry of parameter.values) {
    const limit = ratingRaised(topic, id, entry.value, value);
    if (limit === undefined) continue;
    const label = topic.limits[limit]?.label ?? limit;
    const wanted = `keep ${shown(entry.value, entry.value, unit)} or choose the stricter side`;
    return { ...place, code: 'loosens-a-rating', wanted, limit: label };
  }
  return { ...parameter, values: layered(parameter, name, given, value) };
}

const made = new WeakMap<Topic, WeakMap<HouseLayer, Topic>>();

/**
 * A topic whose parameters carry a dealer's own values, each within its range and with its reason;
 * answers name them. The topic itself is left as it is.
 *
 * @throws InputError naming every parameter that is not the house's to move, is out of its range,
 *   or would loosen a rating
 */
export function withHouse<const T extends Topic>(topic: T, layer: HouseLayer): T;
export function withHouse(topic: Topic, layer: HouseLayer): Topic {
  refuseTopic(topic);
  const before = isPlain(layer) ? made.get(topic)?.get(layer) : undefined;
  if (before) return before;
  const problems: Problem[] = [...layerProblems(layer)];
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  const name = layer.name.trim();
  if (layer.topic !== topic.id) {
    const { topic: found } = layer;
    problems.push({ code: 'other-topic', fact: 'topic', found, wanted: topic.id });
  }
  if (name === '') {
    problems.push({
      code: 'no-house-name',
      fact: 'name',
      found: layer.name,
      wanted: 'the dealer’s name',
    });
  }
  const parameters: Record<string, Parameter> = { ...topic.parameters };
  for (const [id, given] of problems.length > 0 ? [] : Object.entries(layer.parameters)) {
    const result = moved(topic, name, id, given);
    if (isProblem(result)) problems.push(result);
    else parameters[id] = result;
  }
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  // Values move within their ranges, and nothing else.
  const own = likewise({ ...topic, parameters, house: name }, topic);
  const kept = made.get(topic) ?? new WeakMap<HouseLayer, Topic>();
  made.set(topic, kept.set(layer, own));
  return own;
}
