import type { Formula, Limit, Part, Topic } from './shapes';

/** Names a part of a topic and keeps its exact type, so that every id is known to the compiler. */
export function part<const P extends Part>(made: P): P {
  return made;
}

/** Names a topic and keeps its exact type. */
export function defineTopic<const T extends Topic>(made: T): T {
  return made;
}

type Meet<U> = (U extends unknown ? (each: U) => void : never) extends (all: infer I) => void
  ? I
  : never;
type Held<P, K extends keyof Part> = P extends { readonly [key in K]: infer V } ? V : never;

/** One kind of entry from all parts, in their order. Two parts with one id are refused. */
export function gather<P extends readonly Part[], K extends keyof Part>(
  kind: K,
  parts: P,
): Meet<Held<P[number], K>>;
export function gather(kind: keyof Part, parts: readonly Part[]): object {
  const gathered: Record<string, unknown> = {};
  for (const each of parts) {
    for (const [id, entry] of Object.entries(each[kind] ?? {})) {
      if (Object.hasOwn(gathered, id)) throw new Error(`“${id}” is defined twice under ${kind}.`);
      gathered[id] = entry;
    }
  }
  return gathered;
}

/** `rear-axle` as a name in formulas: `rearAxle`. */
export function camel(id: string): string {
  return id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

export const careName = (limitId: string): string => `${camel(limitId)}.careAt`;
export const roomName = (limitId: string): string => `${camel(limitId)}.room`;
export const fullName = (limitId: string): string => `${camel(limitId)}.roomUsed`;

type Unit = (name: string) => string;

/**
 * What every limit adds to the formulas: the weight from which care is due, the room between empty
 * and limit, and how much of that room is used.
 *
 *     0 ─── empty ───────── used ──── careAt ─ limit
 *           └───── room used ┘
 *           └──────────── room ──────────────┘
 */
function limitFormulas(id: string, limit: Limit, unit: Unit): [string, Formula][] {
  const { source, label, used, empty } = limit;
  const shown = unit(limit.limit);
  const room = empty ? `${limit.limit} - ${empty}` : limit.limit;
  const top = empty ? `(${used} - ${empty})` : used;
  const made: [string, Formula][] = [
    [roomName(id), { label: `${label}: room above empty`, unit: shown, is: room, source }],
    [
      fullName(id),
      { label: `${label}: share of the room used`, unit: '1', is: `${top} / (${room})`, source },
    ],
  ];
  if (limit.margin) {
    const is = `${limit.limit} * (1 - ${limit.margin})`;
    made.push([careName(id), { label: `${label}: care from`, unit: shown, is, source }]);
  }
  return made;
}

/** The unit a name is kept in; undefined when the topic has no such name. */
export function declaredUnit(topic: Part, name: string): string | undefined {
  const entry = topic.formulas?.[name] ?? topic.parameters?.[name];
  if (entry) return entry.unit;
  const fact = topic.facts?.[name];
  if (fact) return fact.kind === 'quantity' ? fact.unit : fact.kind;
  const dot = name.lastIndexOf('.');
  const list = topic.facts?.[name.slice(0, dot)];
  return list?.kind === 'rows' ? list.columns[name.slice(dot + 1)]?.unit : undefined;
}

/** All formulas of a topic, those that its limits add included. */
export function allFormulas(topic: Topic): ReadonlyMap<string, Formula> {
  const all = new Map<string, Formula>(Object.entries(topic.formulas));
  const unit: Unit = (name) => declaredUnit(topic, name) ?? '';
  for (const [id, limit] of Object.entries(topic.limits)) {
    for (const [name, formula] of limitFormulas(id, limit, unit)) all.set(name, formula);
  }
  return all;
}
