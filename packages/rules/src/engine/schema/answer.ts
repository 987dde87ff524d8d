import { levels, type Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { dialect, type Schema } from './facts';

const text: Schema = { type: 'string' };
const day: Schema = { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}$' };
const texts: Schema = { type: 'array', items: text };
const ref = (name: string): Schema => ({ $ref: `#/$defs/${name}` });
const list = (items: Schema): Schema => ({ type: 'array', items });
const map = (of: Schema): Schema => ({ type: 'object', additionalProperties: of });

/** An object with just these; those whose name ends in `?` may be absent. */
function shape(fields: Readonly<Record<string, Schema>>): Schema {
  const named = Object.entries(fields).map(([key, of]) => [key.replace(/\?$/, ''), of] as const);
  return {
    type: 'object',
    properties: Object.fromEntries(named),
    required: Object.keys(fields).filter((key) => !key.endsWith('?')),
    additionalProperties: false,
  };
}

// An end that is open is null.
const end: Schema = { type: ['number', 'null'] };

const ends = (unit: string): Schema => shape({ lo: end, hi: end, unit: { const: unit } });

const dated = { from: day, 'until?': day };
const state: Schema = { enum: [...levels, 'not-asked'] };

const parts: Readonly<Record<string, Schema>> = {
  ends: shape({ lo: end, hi: end, unit: text }),
  interval: shape({ lo: end, hi: end }),
  source: shape({
    class: { enum: ['published', 'common-practice', 'from-memory', 'house', 'invented'] },
    cite: text,
    'section?': text,
    'note?': text,
  }),
  // What is said, as a code with its values, a text with its holes, a quantity.
  message: { type: 'object', minProperties: 1 },
  told: { anyOf: [ref('ends'), shape({ among: texts })] },
};

const step: Schema = shape({
  kind: text,
  label: text,
  noun: text,
  value: text,
  messages: map(ref('message')),
  'ends?': ref('ends'),
  'among?': texts,
  'status?': { enum: ['known', 'unknown', 'silent'] },
  'tests?': { type: 'boolean' },
  'working?': text,
  'told?': text,
  'is?': text,
  from: texts,
  'decidedBy?': texts,
  'source?': ref('source'),
  'readFrom?': text,
});

const missing: Schema = shape({
  fact: text,
  label: text,
  ask: text,
  where: text,
  decides: texts,
  tips: { anyOf: [ref('ends'), text, { type: 'null' }] },
  side: { enum: ['above', 'below', null] },
  together: texts,
  settles: { type: 'number', minimum: 0, maximum: 1 },
  says: text,
  message: ref('message'),
});

const choice: Schema = shape({
  label: text,
  among: texts,
  labels: texts,
  says: texts,
  messages: list(ref('message')),
  source: ref('source'),
});

const selection: Schema = shape({
  id: text,
  label: text,
  items: list(
    shape({
      id: text,
      label: text,
      'group?': text,
      chosen: { enum: ['yes', 'no', 'unknown'] },
      amounts: map(ref('ends')),
      because: text,
      message: ref('message'),
      source: ref('source'),
    }),
  ),
  totals: map(ref('ends')),
});

const ranking: Schema = shape({
  id: text,
  label: text,
  entries: list(
    shape({
      id: text,
      says: text,
      message: ref('message'),
      value: ref('ends'),
      apart: { type: 'boolean' },
      out: { type: 'boolean' },
    }),
  ),
  rest: text,
  source: ref('source'),
});

const series: Schema = shape({
  label: text,
  steps: { type: 'integer' },
  lines: map(shape({ label: text, ends: list(ref('ends')) })),
});

const said = { says: text, message: ref('message') };
const number: Schema = { type: 'number' };

const house: Schema = shape({
  name: text,
  parameters: list(
    shape({
      id: text,
      label: text,
      value: number,
      unit: text,
      from: day,
      instead: number,
      reason: text,
      ...said,
    }),
  ),
});

function limitOf(ids: readonly string[]): Schema {
  return shape({
    id: { enum: ids },
    label: text,
    used: ref('ends'),
    limit: ref('ends'),
    headroom: ref('ends'),
    share: ref('interval'),
    state,
    'uncalledFor?': { const: true },
    'careAt?': ref('ends'),
    roomUsed: ref('interval'),
    source: ref('source'),
  });
}

function findingOf(ids: readonly string[]): Schema {
  return shape({
    id: { enum: ids },
    label: text,
    level: state,
    code: text,
    wrong: text,
    because: text,
    do: text,
    proviso: text,
    'see?': shape({ topic: text, says: text }),
    alternatives: texts,
    values: map(ref('told')),
    says: text,
    messages: map(ref('message')),
    source: ref('source'),
  });
}

/** Every result by id, each in the unit it is declared in; a share is kept as a fraction. */
function valuesOf(topic: Topic): Schema {
  const numbers = [...allFormulas(topic)].flatMap(([id, { label, unit }]) =>
    unit === 'yes-no' || !Object.hasOwn(topic.formulas, id)
      ? []
      : [[id, { title: label, ...ends(unit === '%' ? '1' : unit) }] as const],
  );
  const properties = Object.fromEntries(numbers);
  return { type: 'object', properties, additionalProperties: ref('ends') };
}

/** What a topic answers with, as JSON, where an end that is open is null. */
export function answerSchema(topic: Topic): Schema {
  const limits = Object.keys(topic.limits);
  const findings = Object.keys(topic.findings);
  const message = ref('message');
  const whole = shape({
    topic: { const: topic.id },
    rules: { const: topic.version },
    asOf: day,
    outcome: { enum: Object.values(topic.outcomes).map(({ id }) => id) },
    words: text,
    sentence: text,
    restsOn: text,
    messages: shape({ sentence: message, 'restsOn?': message, cautions: list(message) }),
    binding: { enum: [...limits, null] },
    limits: list(limits.length > 0 ? limitOf(limits) : {}),
    values: valuesOf(topic),
    findings: list(findings.length > 0 ? findingOf(findings) : {}),
    choices: map(choice),
    selections: list(selection),
    rankings: list(ranking),
    series: map(series),
    missing: list(missing),
    apart: map({ anyOf: [ref('ends'), { type: 'null' }] }),
    cautions: texts,
    assumed: list(shape({ 'fact?': text, ...said, source: ref('source') })),
    parameters: list(
      shape({ id: text, label: text, value: number, unit: text, ...dated, source: ref('source') }),
    ),
    dated: list(
      shape({
        parameter: text,
        value: number,
        unit: text,
        ...dated,
        'next?': shape({ from: day, value: number }),
        ...said,
      }),
    ),
    house: { anyOf: [house, { type: 'null' }] },
    'trace?': shape({
      root: { const: 'verdict' },
      units: { enum: ['us', 'metric'] },
      steps: map(step),
    }),
  });
  return {
    $schema: dialect,
    $id: `https://example.org/tarebook/${topic.id}/${topic.version}/answer`,
    title: `${topic.title}: its answer`,
    ...whole,
    $defs: parts,
  };
}
