import type {
  Decision,
  Family,
  Finding,
  Formula,
  Level,
  Limit,
  Part,
  Result,
  Ruling,
  Selection,
  Simulation,
  Topic,
} from './shapes';

/** Names a part of a topic and keeps its exact type, so that every id is known to the compiler. */
export function part<const P extends Part>(made: P): P {
  return made;
}

/**
 * A family of the trade: what several questions reckon with, its parts put together in their order.
 * A topic stands on results of it (`standingOn`), or judges all that it has.
 */
export function family<const P extends readonly Part[]>(...parts: P) {
  return {
    facts: gather('facts', parts),
    parameters: gather('parameters', parts),
    tables: gather('tables', parts),
    wordTables: gather('wordTables', parts),
    formulas: gather('formulas', parts),
    decisions: gather('decisions', parts),
    simulations: gather('simulations', parts),
    limits: gather('limits', parts),
    findings: gather('findings', parts),
    renamed: gather('renamed', parts),
  };
}

type Meet<U> = (U extends unknown ? (each: U) => void : never) extends (all: infer I) => void
  ? I
  : never;
type Held<P, K extends keyof Part> = P extends { readonly [key in K]: infer V } ? V : never;

/**
 * One kind of entry from all parts, in their order. Two entries with one id are refused, unless they
 * are one and the same, as when two parts stand on the same result of another topic.
 */
export function gather<P extends readonly Part[], K extends keyof Part>(
  kind: K,
  parts: P,
): [Held<P[number], K>] extends [never] ? Readonly<Record<never, never>> : Meet<Held<P[number], K>>;
export function gather(kind: keyof Part, parts: readonly Part[]): object {
  const gathered: Record<string, unknown> = {};
  for (const each of parts) {
    for (const [id, entry] of Object.entries(each[kind] ?? {})) {
      if (Object.hasOwn(gathered, id) && gathered[id] !== entry) {
        throw new Error(`“${id}” is defined twice under ${kind}.`);
      }
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

/** What words may name beside values: the wishes that stand against an order of a catalogue. */
export const againstName = 'against';

type Unit = (name: string) => string;

/**
 * What every limit adds to the formulas: the room between empty and limit, how much of it is used,
 * and the weight from which care is due. Where there is no room, whatever is kept is kept narrowly.
 *
 *     0 ─── empty ───────── used ──── careAt ─ limit
 *           └───── room used ┘         └ margin × room, or the least
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
    // Written so that a limit without end stays one, and is never taken from itself.
    const whole = `${limit.limit} * (1 - ${limit.margin})`;
    const byShare = empty ? `${whole} + ${empty} * ${limit.margin}` : whole;
    const least = limit.marginLeast;
    const from = least ? `min(${byShare}, ${limit.limit} - ${least})` : byShare;
    // Of nothing asked, nothing is near its end.
    const is = `choose(${room} > 0 || (${used} >= 0 && ${used} <= 0), ${from}, -unlimited)`;
    made.push([careName(id), { label: `${label}: care from`, unit: shown, is, source }]);
  }
  return made;
}

/** The number that an item of a selection adds to an amount, and whether it is chosen. */
const shareOf = (item: Selection['items'][string], amount: string): string | undefined => {
  const by = item.amounts[amount];
  return by === undefined || !item.when ? by : `choose(${item.when}, ${by}, 0)`;
};

/** `kit.weight`: what all chosen things of a selection come to. */
function selectionFormulas(id: string, selection: Selection): [string, Formula][] {
  const { label, source, items } = selection;
  return Object.entries(selection.amounts).map(([amount, unit]) => {
    const shares = Object.values(items).flatMap((item) => shareOf(item, amount) ?? []);
    return [
      `${id}.${amount}`,
      { label: `${label}: ${amount} in all`, unit, is: shares.join(' + ') || '0', source },
    ];
  });
}

/** The day a case is judged as of, for formulas: its day of the year, and the year with its part. */
export const calendarUnits: Readonly<Record<string, string>> = { 'asOf.day': '', 'asOf.year': '' };

/** A state or value of a simulation; its step has none of its own. */
export function simulated(topic: Part, name: string): { unit: string } | undefined {
  const simulation = simulationOf(topic, name);
  if (!simulation) return undefined;
  const [id, { states, values }] = simulation;
  return name === `${id}.step` ? { unit: '' } : (states[name] ?? values[name]);
}

/** The simulation that a name stands in, by the words it begins with. */
export function simulationOf(topic: Part, name: string): [string, Simulation] | undefined {
  return Object.entries(topic.simulations ?? {}).find(([id]) => name.startsWith(`${id}.`));
}

/** The unit a name is kept in; undefined when the topic has no such name. */
export function declaredUnit(topic: Part, name: string): string | undefined {
  const entry = topic.formulas?.[name] ?? topic.parameters?.[name] ?? simulated(topic, name);
  if (entry) return entry.unit;
  if (topic.decisions?.[name]) return 'choice';
  if (Object.hasOwn(calendarUnits, name)) return calendarUnits[name];
  const fact = topic.facts?.[name];
  if (fact) return fact.kind === 'quantity' ? fact.unit : fact.kind;
  const dot = name.lastIndexOf('.');
  const total = topic.selections?.[name.slice(0, dot)]?.amounts[name.slice(dot + 1)];
  if (total !== undefined) return total;
  const list = topic.facts?.[name.slice(0, dot)];
  return list?.kind === 'rows' ? list.columns[name.slice(dot + 1)]?.unit : undefined;
}

/** Whether a name is a year, and no amount. */
export function isYear({ formulas, parameters, facts }: Topic, name: string): boolean {
  const fact = facts[name];
  const entry =
    formulas[name] ?? parameters[name] ?? (fact?.kind === 'quantity' ? fact : undefined);
  return entry?.year === true;
}

/** All formulas of a topic, those that its limits add included. */
export function allFormulas(topic: Family): ReadonlyMap<string, Formula> {
  const all = new Map<string, Formula>(Object.entries(topic.formulas));
  const unit: Unit = (name) => declaredUnit(topic, name) ?? '';
  for (const [id, limit] of Object.entries(topic.limits)) {
    for (const [name, formula] of limitFormulas(id, limit, unit)) {
      // A published rule set holds them as they were when it was published.
      if (!all.has(name)) all.set(name, formula);
    }
  }
  for (const [id, selection] of Object.entries(topic.selections ?? {})) {
    for (const [name, formula] of selectionFormulas(id, selection)) all.set(name, formula);
  }
  return all;
}

/** What a result of a decision says, as a ruling on the decision. */
function rulingOf(name: string, word: string, result: Result): Ruling {
  const { says, because, do: todo, proviso } = result;
  return {
    when: { all: [{ fact: name, operator: 'equal', value: word }] },
    wrong: says,
    ...(because !== undefined && { because }),
    ...(todo !== undefined && { do: todo }),
    ...(proviso !== undefined && { proviso }),
  };
}

/**
 * The finding that a decision makes: its level is that of the result, and what is said is the
 * result's. `name` is the decision's own.
 */
export function findingOf(
  name: string,
  decision: Decision,
  more: Pick<Finding, 'askedBy' | 'open' | 'stopOpen' | 'first' | 'askedFirst' | 'settles'> = {},
): Finding {
  const results = Object.entries(decision.results);
  const rulings = (level: Level) => {
    const found = results.filter(([, result]) => result.level === level);
    return found.map(([word, result]) => rulingOf(name, word, result));
  };
  const made = (['stop', 'unknown', 'if', 'care'] as const).flatMap((level) => {
    const found = rulings(level);
    return found.length === 0 ? [] : [[level, found] as const];
  });
  const fine = results.find(([, { level }]) => level === 'ok');
  return {
    label: decision.label,
    ...more,
    ...Object.fromEntries(made),
    otherwise: fine?.[1].says ?? '',
    decision: name,
    source: decision.source,
  };
}

/** A part's facts and reckoning for another topic, which has limits and findings of its own. */
export function reckoningOf<const P extends Part>(made: P): Omit<P, 'limits' | 'findings'> {
  const { limits: _limits, findings: _findings, ...rest } = made;
  return rest;
}

/** Every name that a condition may compare. */
export const namesOf = (topic: Topic): ReadonlySet<string> =>
  new Set([
    ...Object.keys(topic.facts),
    ...Object.keys(topic.parameters),
    ...allFormulas(topic).keys(),
    ...Object.keys(topic.decisions ?? {}),
  ]);
