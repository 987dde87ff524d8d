import type { Catalogue } from '../define/catalogue';
import type { Change } from '../define/changes';
import type {
  Asking,
  Assumption,
  Called,
  Caution,
  Column,
  Decision,
  Default,
  Fact,
  Finding,
  ForEverybody,
  Formula,
  HowTo,
  Limit,
  Outcome,
  Parameter,
  ParameterValue,
  Ranking,
  Result,
  Ruling,
  Selection,
  Simulation,
  Source,
  Table,
  Telling,
  Topic,
  WordTable,
  Worked,
} from '../define/shapes';
import { isPlain } from './given';
import { meant } from './near';
import type { Note } from './noted';

type KeyOf<T> = T extends unknown ? keyof T & string : never;
/** Looks at what stands under a key; a key that has nothing below it is looked at no further. */
type Look = (at: string, value: unknown, note: Note) => void;
/** Every key that a shape has: one that is left out here, or is none, does not compile. */
type Keys<T> = Readonly<Record<KeyOf<T>, Look>>;

const leaf: Look = () => undefined;

/** An entry whose keys are words of the language of rule sets. */
const entry =
  <T>(keys: Keys<T>): Look =>
  (at, value, note) => {
    if (!isPlain(value)) return;
    const known = new Map<string, Look>(Object.entries(keys));
    for (const [key, inner] of Object.entries(value)) {
      const look = known.get(key);
      if (look) {
        look(`${at} ${key}`, inner, note);
        continue;
      }
      const options = [...known.keys()];
      note('unread-key', at, key, { options, ...meant(key, options) });
    }
  };

/** Entries under names of the author's own. */
const named =
  (look: Look): Look =>
  (at, value, note) => {
    if (!isPlain(value)) return;
    for (const [name, inner] of Object.entries(value)) look(`${at} ${name}`, inner, note);
  };

/** One, or several in a list. */
const each =
  (look: Look): Look =>
  (at, value, note) => {
    for (const inner of Array.isArray(value) ? value : [value]) look(at, inner, note);
  };

const source = entry<Source>({ class: leaf, cite: leaf, section: leaf, note: leaf });
const called = { label: leaf, noun: leaf };
const silent = entry<Default<unknown>>({ value: leaf, says: leaf, source, quiet: leaf });
const column = entry<Column>({
  ...{ label: leaf, unit: leaf, least: leaf, most: leaf, required: leaf, ask: leaf, where: leaf },
});

const factWords = {
  ...called,
  ...{ kind: leaf, ask: leaf, where: leaf, exact: leaf, instead: leaf, means: leaf },
};
const factOf: Readonly<Record<Fact['kind'], Look>> = {
  quantity: entry<Extract<Fact, { kind: 'quantity' }>>({
    ...factWords,
    ...{ unit: leaf, counted: leaf, isRating: leaf, year: leaf, least: leaf, most: leaf, silent },
  }),
  choice: entry<Extract<Fact, { kind: 'choice' }>>({
    ...factWords,
    options: leaf,
    scale: leaf,
    silent,
  }),
  'yes-no': entry<Extract<Fact, { kind: 'yes-no' }>>({ ...factWords, silent }),
  rows: entry<Extract<Fact, { kind: 'rows' }>>({ ...factWords, columns: named(column), silent }),
};
const fact: Look = (at, value, note) => {
  const kind = isPlain(value) ? value.kind : undefined;
  for (const [of, look] of Object.entries(factOf)) if (of === kind) look(at, value, note);
};

const says = { wrong: leaf, because: leaf, do: leaf };
const rulings = each(entry<Ruling>({ when: leaf, ...says, proviso: leaf }));
const finding = entry<Finding>({
  ...{ ...called, askedBy: leaf, askedByKnown: leaf, askedWhen: leaf, first: leaf },
  ...{
    askedFirst: leaf,
    settles: leaf,
    saidOpen: leaf,
    decision: leaf,
    see: leaf,
    stopOpen: leaf,
    otherwise: leaf,
    source,
  },
  ...{ stop: rulings, unknown: rulings, if: rulings, care: rulings },
  open: entry<NonNullable<Finding['open']>>(says),
});
/** Read no more; versions that were kept have it. */
const keptRelief = { open: leaf };
const limit = entry<Limit>({
  ...{
    ...called,
    short: leaf,
    plural: leaf,
    exceeded: leaf,
    supply: leaf,
    used: leaf,
    limit: leaf,
    empty: leaf,
  },
  ...{ do: leaf, near: leaf },
  ...{ margin: leaf, marginLeast: leaf, askedBy: leaf, askedWhen: leaf, source },
  relief: entry<NonNullable<Limit['relief']>>({ ...keptRelief, when: leaf, limit: leaf }),
  cautious: entry<NonNullable<Limit['cautious']>>({ when: leaf, used: leaf }),
});
const formula = entry<Formula>({
  ...called,
  unit: leaf,
  year: leaf,
  is: leaf,
  within: leaf,
  assumes: leaf,
  source,
});
const value = entry<ParameterValue>({ from: leaf, until: leaf, value: leaf, house: leaf });
const parameter = entry<Parameter>({
  ...{ ...called, unit: leaf, year: leaf, values: each(value), range: leaf, source },
});
const result = entry<Result>({
  ...{ label: leaf, says: leaf, because: leaf, do: leaf, proviso: leaf, level: leaf },
});
const decision = entry<Decision>({
  ...{ label: leaf, hit: leaf, on: leaf, results: named(result), source },
  rows: each(entry<Decision['rows'][number]>({ when: leaf, gives: leaf })),
});
const item = entry<Selection['items'][string]>({
  ...{ label: leaf, group: leaf, when: leaf, amounts: leaf, because: leaf, source },
});
const simulated = { label: leaf, unit: leaf, within: leaf, source };
const simulation = entry<Simulation>({
  ...{ label: leaf, steps: leaf, source },
  states: named(entry<Simulation['states'][string]>({ ...simulated, start: leaf, next: leaf })),
  values: named(entry<Simulation['values'][string]>({ ...simulated, is: leaf })),
});
const asked = entry<Exclude<NonNullable<Asking['says']>, string>[number]>({
  ...{ when: leaf, says: leaf },
});
const change = entry<Change>({
  ...{ kind: leaf, fact: leaf, column: leaf, says: leaf, asks: leaf, source, onlyIf: leaf },
  ...{ unlessKnown: leaf, rights: leaf, remind: leaf, keepFirst: leaf, keeps: leaf, step: leaf },
  ...{ within: leaf, sides: leaf, scaled: leaf, shown: leaf, least: leaf, rowsAtLeast: leaf },
  to: leaf,
});

const topic: Keys<Topic> = {
  ...{ id: leaf, version: leaf, title: leaf, question: leaf, apart: leaf, headline: leaf },
  ...{ house: leaf, renamed: leaf },
  facts: named(fact),
  parameters: named(parameter),
  tables: named(entry<Table>({ ...called, keyUnit: leaf, valueUnit: leaf, rows: leaf, source })),
  wordTables: named(entry<WordTable>({ ...called, valueUnit: leaf, values: leaf, source })),
  formulas: named(formula),
  limits: named(limit),
  findings: named(finding),
  decisions: named(decision),
  selections: named(entry<Selection>({ label: leaf, amounts: leaf, items: named(item), source })),
  rankings: named(
    entry<Ranking>({
      ...{ label: leaf, first: leaf, source },
      of: named(entry<Ranking['of'][string]>({ by: leaf, says: leaf })),
    }),
  ),
  simulations: named(simulation),
  catalogues: named(
    entry<Catalogue>({
      ...{ label: leaf, source, model: leaf, year: leaf, wishes: leaf, years: leaf, figures: leaf },
      ...{ placeUnit: leaf, models: leaf, options: leaf, offers: leaf, rules: leaf, rows: leaf },
      tells: leaf,
    }),
  ),
  outcomes: named(entry<Outcome>({ id: leaf, words: leaf, sentence: leaf, plain: leaf })),
  tells: each(entry<Telling>({ of: leaf, says: leaf, when: leaf })),
  assumptions: each(entry<Assumption>({ when: leaf, says: leaf, source })),
  cautions: each(entry<Caution>({ says: leaf, source, fits: leaf })),
  changes: each(change),
  askings: named(
    entry<Asking>({
      ...{
        label: leaf,
        results: leaf,
        impliedBy: leaf,
        usual: leaf,
        yesOrNo: leaf,
        says: each(asked),
      },
    }),
  ),
  everybody: named(
    entry<ForEverybody>({
      ...{ rule: leaf, because: leaf, look: leaf, given: leaf, givenSays: leaf, clauses: leaf },
      worked: entry<Worked>({ says: leaf, given: leaf }),
      fromTold: each(entry<Worked>({ says: leaf, given: leaf })),
      otherwise: leaf,
    }),
  ),
  how: named(entry<HowTo>({ label: leaf, steps: leaf, caution: leaf, source, when: leaf })),
  called: entry<Called>({ topic: leaf, facts: leaf, options: leaf }),
};

/** Published rule sets say these beside; see `publish`. */
const published = { conditions: leaf, missing: leaf };

/**
 * A key that nothing reads, such as `carre` for `care`: what stands under it would count for
 * nothing, and nobody would hear of it.
 */
export function checkKeys(made: Topic, note: Note): void {
  entry<Topic>({ ...topic, ...published })('topic', made, note);
}
