import type { Read } from '../catalogue/orders';
import type { Catalogue } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import type { Inputs, NumberValue, Value } from '../value/values';
import type { NodeOf } from './grammar/nodes';

/**
 * What few topics reckon with. Its code comes with the data that want it, so that a program with
 * none of these topics has none of the code:
 *
 *     data of a topic ── brings ──► code, kept here ◄── asked for by ── a formula
 */
export type Brought = {
  readonly catalogued: (node: NodeOf<'catalogued'>, catalogue: Catalogue, read: Read) => Value;
  readonly withBuilds: (topic: Topic, inputs: Inputs) => Inputs;
  readonly sunHeight: (latitude: NumberValue, day: NumberValue, hour: NumberValue) => NumberValue;
};

let here: Partial<Brought> = {};

export function bring(code: Partial<Brought>): void {
  here = { ...here, ...code };
}

export function brought<K extends keyof Brought>(name: K): Brought[K] {
  const code: Partial<Brought>[K] = here[name];
  if (code) return code;
  throw new Error('Rule set without bringingSun, bringingCatalogues or topicFromPublished.');
}

/** The inputs with the rows that the topic's catalogues add; most topics have none. */
export const withCatalogues = (topic: Topic, inputs: Inputs): Inputs =>
  Object.keys(topic.catalogues ?? {}).length === 0 ? inputs : brought('withBuilds')(topic, inputs);
