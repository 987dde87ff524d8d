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
import { sayProblem } from '../check/messages';
import { nearest } from '../check/near';
import { InputError, type Problem } from '../check/problem';
import type { Parameter, ParameterValue, Topic } from '../define/shapes';
import { ratingRaised } from './loosens';
import type { HouseLayer, HouseValue } from './shapes';

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text));

const shown = (lo: number, hi: number, unit: string): string =>
  unit === '1' ? (lo === hi ? `${lo}` : `${lo}–${hi}`) : show({ lo, hi }, unit);

const refuse = (fact: string, found: string, wanted: string): Problem => ({
  code: 'house',
  fact,
  found,
  wanted,
});

/** The value in the parameter's own unit, or why it is none. */
function readValue(id: string, { unit }: Parameter, given: HouseValue): number | Problem {
  const text =
    typeof given.value === 'string' ? given.value : `${given.value} ${given.unit ?? ''}`.trim();
  const own: Unit = unitOf(unit === '' ? '1' : unit);
  const wanted = `one value${unit === '' || unit === '1' ? '' : ' with its unit'}, such as “${shown(5, 5, unit)}”`;
  const read = readQuantity(text);
  if (wasMisread(read)) return { code: read.code, fact: id, found: read.found, wanted };
  if (read.from !== read.to || read.within !== undefined) {
    return refuse(id, `“${text}” is a range`, `write ${wanted}`);
  }
  if (!read.unit && own.symbol !== '1') return { code: 'no-unit', fact: id, found: text, wanted };
  const from = read.unit ?? own;
  if (!sameDimension(from.dimension, own.dimension)) {
    return refuse(id, `“${text}” is not in ${unit}`, `write ${wanted}`);
  }
  return rounded(convert(read.from, from, own));
}

function notToBeMoved(topic: Topic, id: string): Problem | undefined {
  const choices = Object.entries(topic.parameters).flatMap(([each, { range }]) =>
    range ? [each] : [],
  );
  const wanted = `a house may choose ${choices.join(', ') || 'nothing here'}`;
  if (Object.hasOwn(topic.facts, id)) {
    return refuse(
      id,
      'this is a fact of the case, such as a rating, and stays as it was read',
      wanted,
    );
  }
  if (!Object.hasOwn(topic.parameters, id)) {
    const near = nearest(id, choices);
    return {
      code: 'no-such-parameter',
      fact: id,
      found: id,
      wanted: topic.id,
      ...(near && { near }),
    };
  }
  return topic.parameters[id]?.range ? undefined : refuse(id, 'this is not a house choice', wanted);
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

function moved(topic: Topic, layer: HouseLayer, id: string, given: HouseValue) {
  const refused = notToBeMoved(topic, id);
  const parameter = topic.parameters[id];
  if (refused || !parameter?.range) return refused ?? refuse(id, 'it is not here', 'leave it out');
  const value = readValue(id, parameter, given);
  if (typeof value !== 'number') return value;
  const { unit, range } = parameter;
  if (value < range[0] || value > range[1]) {
    const found = `${shown(value, value, unit)} is outside what a house may choose`;
    return refuse(id, found, `write ${shown(range[0], range[1], unit)}`);
  }
  if (given.reason.trim() === '') {
    return refuse(id, 'it has no reason', 'say in a sentence why the house keeps it so');
  }
  if (given.from !== undefined && !isDay(given.from)) {
    return refuse(id, `“${given.from}” is not a day`, 'write it as 2026-01-31');
  }
  for (const entry of parameter.values) {
    const limit = ratingRaised(topic, id, entry.value, value);
    if (limit === undefined) continue;
    const label = topic.limits[limit]?.label ?? limit;
    const found = `${shown(value, value, unit)} would loosen a rating (${label})`;
    return refuse(
      id,
      found,
      `keep ${shown(entry.value, entry.value, unit)} or choose the stricter side`,
    );
  }
  return { ...parameter, values: layered(parameter, layer.name.trim(), given, value) };
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
  const before = made.get(topic)?.get(layer);
  if (before) return before;
  const problems: Problem[] = [];
  if (layer.topic !== topic.id) {
    problems.push(refuse('topic', `this layer is for “${layer.topic}”`, `write ${topic.id}`));
  }
  if (layer.name.trim() === '') {
    problems.push(refuse('name', 'the layer does not say whose it is', 'write the dealer’s name'));
  }
  const parameters: Record<string, Parameter> = { ...topic.parameters };
  for (const [id, given] of problems.length > 0 ? [] : Object.entries(layer.parameters)) {
    const result = moved(topic, layer, id, given);
    if ('code' in result) problems.push(result);
    else parameters[id] = result;
  }
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  const own: Topic = { ...topic, parameters, house: layer.name.trim() };
  const kept = made.get(topic) ?? new WeakMap<HouseLayer, Topic>();
  made.set(topic, kept.set(layer, own));
  return own;
}
