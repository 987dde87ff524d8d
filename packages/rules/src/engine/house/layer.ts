import { described, isPlain } from '../check/given';
import { meant } from '../check/near';
import type { Problem } from '../check/problem';
import type { HouseLayer } from './shapes';

/** How a layer is written, for messages. */
export const wanted =
  '{ "topic": "tow-fit", "name": "…", "parameters": { "margin.other": { "value": "10 %", "reason": "…" } } }, or a list of these';

const isText = (given: unknown): given is string => typeof given === 'string';

const wrong = (fact: string, given: unknown): Problem => ({
  code: 'not-a-house-layer',
  fact,
  found: given === undefined ? '' : described(given),
  wanted,
});

/** A key that nothing reads, such as `form` for `from`: what stands under it would count for nothing. */
function strangeIn(
  place: string,
  given: Readonly<Record<string, unknown>>,
  options: readonly string[],
): Problem | undefined {
  const key = Object.keys(given).find((each) => !options.includes(each));
  if (key === undefined) return undefined;
  const fact = `${place}${key}`;
  const said = `one of ${options.join(', ')}`;
  return {
    code: 'no-such-house-key',
    fact,
    found: key,
    wanted: said,
    options,
    ...meant(key, options),
  };
}

function valueProblems(place: string, id: string, given: unknown): readonly Problem[] {
  const at = `${place}parameters, ${id}`;
  if (!isPlain(given)) return [wrong(at, given)];
  const other = strangeIn(`${at}, `, given, ['value', 'unit', 'reason', 'from']);
  if (other) return [other];
  const { value, unit = '', reason, from = '' } = given;
  if (!isText(value) && !Number.isFinite(value)) return [wrong(`${at}, value`, value)];
  if (!isText(unit)) return [wrong(`${at}, unit`, unit)];
  if (!isText(from)) return [wrong(`${at}, from`, from)];
  if (isText(reason)) return [];
  const found = reason === undefined ? '' : described(reason);
  return [
    {
      code: 'no-reason',
      fact: `${place}${id}`,
      found,
      wanted: 'a sentence why the house keeps it so',
    },
  ];
}

/** Where something is no layer; `place` is what stands before it in its file. */
export function layerProblems(layer: unknown, place = ''): readonly Problem[] {
  if (!isPlain(layer)) return [wrong(`${place}house layer`, layer)];
  const strange = strangeIn(place, layer, ['topic', 'name', 'parameters']);
  if (strange) return [strange];
  const { topic, name, parameters } = layer;
  if (!isText(topic)) return [wrong(`${place}topic`, topic)];
  if (!isText(name)) return [wrong(`${place}name`, name)];
  if (!isPlain(parameters)) return [wrong(`${place}parameters`, parameters)];
  return Object.entries(parameters).flatMap(([id, given]) => valueProblems(place, id, given));
}

/** Whether everything in it is as a layer has it. */
export const isLayer = (layer: unknown): layer is HouseLayer => layerProblems(layer).length === 0;
