import { described } from '../check/given';
import { sayProblem } from '../check/messages';
import { InputError } from '../check/problem';
import { isLayer, layerProblems, wanted } from './layer';
import type { HouseLayer } from './shapes';

function refuse(found: string): never {
  throw new InputError([{ code: 'not-json', fact: 'house layer', found, wanted }], sayProblem);
}

/**
 * Reads a house file: JSON, one layer or a list of them.
 *
 * @throws InputError saying in a sentence each where it is not as it should be
 */
export function readHouse(source: string): readonly HouseLayer[] {
  if (typeof source !== 'string') refuse(described(source));
  let data: unknown;
  try {
    data = JSON.parse(source.replace(/^\ufeff/, ''));
  } catch {
    return refuse(source.trim().slice(0, 40));
  }
  const layers: readonly unknown[] = Array.isArray(data) ? data : [data];
  const problems = layers.flatMap((each, i) =>
    layerProblems(each, layers.length > 1 ? `layer ${i + 1}, ` : ''),
  );
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  return layers.filter(isLayer);
}
