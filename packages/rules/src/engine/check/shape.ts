import * as z from 'zod/mini';
import { isVersion } from '../define/order';
import { levels, type Topic } from '../define/shapes';

/**
 * The shape of a rule set as `publish` writes it, loosely: what is not named here stays as it is,
 * so that a version kept before some entry was invented can be read all the same. What the entries
 * say is `checkTopic`'s to judge. Made on first use, so that who never reads one pays nothing.
 */
export function makeShape() {
  // Its faster way builds code from text, which a strict content-security policy forbids.
  z.config({ jitless: true });
  const group = <T extends z.ZodMiniType>(entry: T) => z.record(z.string(), entry);
  const maybe = <T extends z.ZodMiniType>(entry: T) => z.optional(group(entry));
  return z.object({
    id: z.string(),
    version: z.string().check(z.refine(isVersion)),
    title: z.string(),
    question: z.string(),
    facts: group(factShape()),
    parameters: group(parameterShape()),
    tables: group(tableShape()),
    wordTables: maybe(z.object({ ...cited(), valueUnit: z.string(), values: group(z.number()) })),
    formulas: group(z.object({ ...cited(), unit: z.string(), is: z.string() })),
    limits: group(limitShape()),
    findings: group(findingShape()),
    decisions: maybe(decisionShape()),
    selections: maybe(selectionShape()),
    rankings: maybe(rankingShape()),
    simulations: maybe(simulationShape()),
    catalogues: maybe(catalogueShape()),
    outcomes: outcomesShape(),
    apart: group(z.string()),
    headline: z.array(z.string()),
    tells: z.optional(z.array(z.object({ of: z.string(), says: z.string() }))),
    assumptions: z.array(z.object({ when: z.string(), ...said() })),
    changes: z.optional(z.array(changeShape())),
    cautions: z.array(z.object(said())),
    askings: maybe(askingShape()),
    everybody: maybe(everybodyShape()),
    how: maybe(z.object({ ...cited(), steps: z.array(z.string()), caution: z.string() })),
    called: z.optional(calledShape()),
    renamed: maybe(
      z.union([z.string(), z.object({ to: z.string(), values: maybe(z.array(z.string())) })]),
    ),
    house: z.optional(z.string()),
  } satisfies Record<keyof Topic, z.ZodMiniType>);
}

const sourceShape = () => z.object({ class: z.string(), cite: z.string() });
const cited = () => ({ label: z.string(), source: sourceShape() });
const said = () => ({ says: z.string(), source: sourceShape() });
const names = () => z.optional(z.array(z.string()));

function factShape() {
  const words = { label: z.string(), ask: z.string(), where: z.string() };
  const bounds = { unit: z.string(), least: z.number(), most: z.number() };
  const silent = <T extends z.ZodMiniType>(value: T) => z.optional(z.object({ value, ...said() }));
  const column = z.object({ label: z.string(), ...bounds, required: z.boolean() });
  return z.discriminatedUnion('kind', [
    z.object({ ...words, ...bounds, kind: z.literal('quantity'), silent: silent(z.number()) }),
    z.object({
      ...words,
      kind: z.literal('choice'),
      options: z.array(z.string()),
      scale: z.optional(z.boolean()),
      silent: silent(z.string()),
    }),
    z.object({ ...words, kind: z.literal('yes-no'), silent: silent(z.enum(['yes', 'no'])) }),
    z.object({
      ...words,
      kind: z.literal('rows'),
      columns: z.record(z.string(), column),
      silent: z.object({ value: z.literal('none'), ...said() }),
    }),
  ]);
}

const parameterShape = () =>
  z.object({
    ...cited(),
    unit: z.string(),
    values: z.array(
      z.object({ from: z.string(), until: z.optional(z.string()), value: z.number() }),
    ),
    range: z.optional(z.tuple([z.number(), z.number()])),
  });

const tableShape = () =>
  z.object({
    ...cited(),
    keyUnit: z.string(),
    valueUnit: z.string(),
    rows: z.array(z.tuple([z.number(), z.number()])),
  });

const limitShape = () =>
  z.object({
    ...cited(),
    short: z.string(),
    used: z.string(),
    limit: z.string(),
    empty: z.optional(z.string()),
    margin: z.optional(z.string()),
    marginLeast: z.optional(z.string()),
    do: z.optional(z.string()),
    near: z.optional(z.string()),
    // Released ones also have a sentence, `open`, that nothing ever said.
    relief: z.optional(z.object({ when: z.string(), limit: z.string() })),
    cautious: z.optional(z.object({ when: z.string(), used: z.string() })),
    askedBy: names(),
    askedWhen: z.optional(z.string()),
  });

function findingShape() {
  const condition: z.ZodMiniType = z.lazy(() =>
    z.union([
      z.object({ all: z.array(condition) }),
      z.object({ any: z.array(condition) }),
      z.object({
        fact: z.string(),
        operator: z.string(),
        value: z.union([z.object({ fact: z.string() }), z.string(), z.array(z.string())]),
      }),
    ]),
  );
  const when = z.union([z.string(), condition]);
  const words = { because: z.optional(z.string()), do: z.optional(z.string()) };
  const ruling = z.object({
    when,
    wrong: z.string(),
    ...words,
    proviso: z.optional(z.string()),
  });
  const rulings = z.optional(z.union([ruling, z.array(ruling)]));
  return z.object({
    ...cited(),
    otherwise: z.string(),
    open: z.optional(z.object({ wrong: z.string(), ...words })),
    decision: z.optional(z.string()),
    see: z.optional(z.object({ topic: z.string(), says: z.string() })),
    settles: z.optional(z.union([z.literal(true), z.array(z.string())])),
    saidOpen: z.optional(z.literal(true)),
    first: z.optional(z.boolean()),
    stop: rulings,
    stopOpen: z.optional(z.enum(['if', 'care'])),
    unknown: rulings,
    if: rulings,
    care: rulings,
    askedBy: names(),
    askedByKnown: names(),
    askedWhen: z.optional(z.string()),
  });
}

function askingShape() {
  const when = z.optional(z.string());
  const says = z.union([z.string(), z.array(z.object({ when, says: z.string() }))]);
  return z.object({
    label: z.string(),
    results: z.array(z.string()),
    impliedBy: names(),
    says: z.optional(says),
  });
}

function everybodyShape() {
  const text = z.optional(z.string());
  // What facts say is read as a case is.
  const given = z.optional(z.record(z.string(), z.unknown()));
  const worked = z.object({ says: z.string(), given });
  return z.object({
    rule: z.string(),
    because: text,
    look: z.array(z.string()),
    given,
    givenSays: text,
    clauses: z.optional(
      z.record(z.string(), z.union([z.string(), z.record(z.string(), z.string())])),
    ),
    worked: z.optional(worked),
    fromTold: z.optional(z.array(worked)),
    otherwise: text,
  });
}

const calledWords = () => z.record(z.string(), z.array(z.string()));
const calledShape = () =>
  z.object({
    topic: z.array(z.string()),
    facts: z.optional(calledWords()),
    options: z.optional(z.record(z.string(), calledWords())),
  });

function decisionShape() {
  const result = z.object({
    label: z.string(),
    says: z.string(),
    because: z.optional(z.string()),
    do: z.optional(z.string()),
    proviso: z.optional(z.string()),
    level: z.optional(z.enum(levels)),
  });
  const when = z.array(z.union([z.string(), z.array(z.string())]));
  return z.object({
    ...cited(),
    hit: z.enum(['unique', 'first']),
    on: z.array(z.string()),
    rows: z.array(z.object({ when, gives: z.string() })),
    results: z.record(z.string(), result),
  });
}

function selectionShape() {
  const amounts = z.record(z.string(), z.string());
  const when = z.optional(z.string());
  const item = z.object({ ...cited(), when, amounts, because: z.string() });
  return z.object({ ...cited(), amounts, items: z.record(z.string(), item) });
}

const rankingShape = () =>
  z.object({
    ...cited(),
    first: z.enum(['least', 'most']),
    of: z.record(z.string(), z.object({ by: z.string(), says: z.string() })),
  });

function simulationShape() {
  const value = { ...cited(), unit: z.string() };
  const state = z.object({ ...value, start: z.string(), next: z.string() });
  return z.object({
    ...cited(),
    steps: z.union([z.number(), z.string()]),
    states: z.record(z.string(), state),
    values: z.record(z.string(), z.object({ ...value, is: z.string() })),
  });
}

function catalogueShape() {
  const numbers = z.record(z.string(), z.number());
  const text = z.record(z.string(), z.string());
  const model = z.object({
    label: z.string(),
    sold: z.tuple([z.string(), z.string()]),
    offers: z.string(),
    figures: numbers,
    inYear: z.optional(z.record(z.string(), numbers)),
    places: numbers,
  });
  const option = z.object({ label: z.string(), figures: numbers, place: z.string() });
  const offer = z.object({
    option: z.string(),
    as: z.enum(['standard', 'optional']),
    from: z.string(),
    to: z.optional(z.string()),
  });
  const kind = z.enum(['requires', 'excludes', 'one-of']);
  const rule = z.object({ kind, option: z.optional(z.string()), others: z.array(z.string()) });
  return z.object({
    ...cited(),
    model: z.string(),
    year: z.string(),
    wishes: text,
    years: z.array(z.string()),
    figures: text,
    placeUnit: z.string(),
    models: z.record(z.string(), model),
    options: z.record(z.string(), option),
    offers: z.record(z.string(), z.array(offer)),
    rules: z.array(rule),
    rows: z.optional(z.object({ list: z.string(), figures: text, place: z.string() })),
    tells: z.optional(z.record(z.string(), text)),
  });
}

function outcomesShape() {
  const outcome = z.object({ id: z.string(), words: z.string(), sentence: z.string() });
  return z.object({ ok: outcome, care: outcome, stop: outcome, unknown: outcome });
}

function changeShape() {
  const base = { ...said(), fact: z.string(), asks: z.number() };
  const column = z.optional(z.string());
  const step = z.number();
  const bounds = { of: z.optional(z.string()), least: z.number(), most: z.number() };
  const within = z.optional(z.object(bounds));
  return z.discriminatedUnion('kind', [
    z.object({ ...base, kind: z.literal('leave'), column: z.string() }),
    z.object({ ...base, kind: z.literal('less'), column, step }),
    z.object({ ...base, kind: z.literal('shift'), column, step, within }),
    z.object({
      ...base,
      kind: z.literal('scale'),
      scaled: z.array(z.string()),
      shown: z.string(),
      step,
      least: z.number(),
    }),
    z.object({
      ...base,
      kind: z.literal('set'),
      to: z.union([z.object({ option: z.string() }), z.object({ sameAs: z.string() })]),
    }),
  ]);
}
