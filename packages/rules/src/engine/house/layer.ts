import { described, isPlain } from '../check/given';
import { nearest } from '../check/near';
import type { Problem } from '../check/problem';
import { wanted } from './read';

const isText = (given: unknown): boolean => typeof given === 'string';

/** A key that nothing reads, such as `form` for `from`: what stands under it would count for nothing. */
function strangeIn(
  place: string,
  given: Readonly<Record<string, unknown>>,
  known: readonly string[],
): Problem | undefined {
  const key = Object.keys(given).find((each) => !known.includes(each));
  if (key === undefined) return undefined;
  const near = nearest(key, known);
  const found = described(given[key]);
  return {
    code: 'not-a-house-layer',
    fact: `${place}${key}`,
    found,
    wanted,
    ...(near && { near }),
  };
}

/** Where a layer made by a program is not one; files are read by read.ts. */
export function layerProblems(layer: unknown): readonly Problem[] {
  const wrong = (place: string, given: unknown): Problem => ({
    code: 'not-a-house-layer',
    fact: place,
    found: described(given),
    wanted,
  });
  if (!isPlain(layer)) return [wrong('house layer', layer)];
  const strange = strangeIn('', layer, ['topic', 'name', 'parameters']);
  if (strange) return [strange];
  const { topic, name, parameters } = layer;
  if (!isText(topic)) return [wrong('topic', topic)];
  if (!isText(name)) return [wrong('name', name)];
  if (!isPlain(parameters)) return [wrong('parameters', parameters)];
  return Object.entries(parameters).flatMap(([id, given]): readonly Problem[] => {
    if (!isPlain(given)) return [wrong(`parameters, ${id}`, given)];
    const other = strangeIn(`parameters, ${id}, `, given, ['value', 'unit', 'reason', 'from']);
    if (other) return [other];
    const { value, unit = '', reason, from = '' } = given;
    if (!isText(value) && !Number.isFinite(value))
      return [wrong(`parameters, ${id}, value`, value)];
    if (!isText(unit)) return [wrong(`parameters, ${id}, unit`, unit)];
    if (!isText(from)) return [wrong(`parameters, ${id}, from`, from)];
    if (isText(reason)) return [];
    const found = described(reason);
    return [{ code: 'no-reason', fact: id, found, wanted: 'a sentence why the house keeps it so' }];
  });
}
