/** What a result is made of, what is made of it, and where it is said, by its topic's own data. */

const rulings = (finding) =>
  ['stop', 'unknown', 'if', 'care'].flatMap((level) => finding[level] ?? []);

/** The names a condition compares: of its text every word that is a name, of its JSON every fact. */
export function namesOfCondition(condition, isName) {
  const text = typeof condition === 'string' ? condition : JSON.stringify(condition);
  return [...new Set(text.match(/[A-Za-z][\w-]*(?:\.[\w-]+)*/g) ?? [])].filter(isName);
}

const levels = ['stop', 'unknown', 'if', 'care'];

/** A ruling as somebody reads it who checks the trade: its level, when, and what is said then. */
const told = (level, { when, wrong, because, do: then, proviso }) =>
  [
    when === undefined
      ? level
      : `${level}, when ${typeof when === 'string' ? when : JSON.stringify(when)}`,
    wrong && `    ${wrong}`,
    because && `    Because: ${because}`,
    then && `    Do: ${then}`,
    proviso && `    So if: ${proviso}`,
  ]
    .filter(Boolean)
    .join('\n');

const tellings = (finding) => [
  ...levels.flatMap((level) => [finding[level] ?? []].flat().map((each) => told(level, each))),
  ...(finding.otherwise ? [`otherwise ok\n    ${finding.otherwise}`] : []),
];

const dated = ({ from, until, value }) =>
  [value, `from ${from}`, until && `until ${until}`].filter(Boolean).join(', ');

const holes = (value, isName) =>
  [...JSON.stringify(value ?? null).matchAll(/\{([\w.-]+)\}/g)]
    .map(([, name]) => name)
    .filter(isName);

/** Every result of a topic by `kind/id`, with label, unit, text, source and the names it stands on. */
export function resultsOf(topic, { namesIn, parseFormula }) {
  const names = new Set(
    ['facts', 'parameters', 'tables', 'wordTables', 'formulas', 'decisions'].flatMap((kind) =>
      Object.keys(topic[kind] ?? {}),
    ),
  );
  const isName = (name) => names.has(name);
  const isTable = (name) => name in { ...topic.tables, ...topic.wordTables };
  const entry = (kind, of) =>
    Object.entries(topic[kind] ?? {}).map(([id, each]) => [
      `${kind}/${id}`,
      { kind, id, label: each.label, source: each.source, unit: each.unit, ...of(each) },
    ]);
  return new Map([
    ...entry('formulas', ({ is }) => ({
      is,
      // A table is looked up by its name, which is no name of a value.
      on: [...new Set([...namesIn(parseFormula(is)), ...namesOfCondition(is, isTable)])].filter(
        isName,
      ),
    })),
    ...entry('limits', ({ used, limit, empty, margin, marginLeast, askedWhen }) => ({
      is: `${used} ≤ ${limit}`,
      on: [used, limit, empty, margin, marginLeast, askedWhen].filter((name) => isName(name)),
    })),
    ...entry('findings', (finding) => ({
      is: tellings(finding).join('\n'),
      on: [
        ...new Set(rulings(finding).flatMap(({ when }) => namesOfCondition(when, isName))),
        ...(finding.decision ? [finding.decision] : []),
      ],
    })),
    ...entry('decisions', ({ on, hit, rows, results = {} }) => ({
      is: [
        ...rows.map(
          ({ when, gives }) =>
            `${when.map((cell) => [cell].flat().join(' or ')).join(' · ')} → ${gives}`,
        ),
        '',
        ...Object.entries(results).map(
          ([id, { level, says, ...more }]) => `${id}: ${told(level, { ...more, wrong: says })}`,
        ),
      ].join('\n'),
      hit,
      on: [...on],
    })),
    ...entry('parameters', ({ values, range }) => ({
      is: [...values.map(dated), ...(range ? [`a house may set ${range.join(' to ')}`] : [])].join(
        '\n',
      ),
      on: [],
    })),
    ...entry('tables', ({ keyUnit, valueUnit, rows }) => ({
      unit: valueUnit,
      is: rows.map(([key, value]) => `${key} ${keyUnit} → ${value} ${valueUnit}`.trim()).join('\n'),
      on: [],
    })),
    ...entry('wordTables', ({ valueUnit, values }) => ({
      unit: valueUnit,
      is: Object.entries(values)
        .map(([key, value]) => `${key} → ${value} ${valueUnit}`.trim())
        .join('\n'),
      on: [],
    })),
  ]);
}

/** Where a result is said to a person, a line each. */
export function saidOf(topic, { kind, id }) {
  const name = kind === 'limits' ? `limit.${id}` : kind === 'findings' ? `finding.${id}` : id;
  const isIt = (each) => each === name;
  const lines = [];
  if (topic.headline.includes(name)) lines.push('among what a reader looks for first');
  if (Object.values(topic.apart).includes(name) || name in topic.apart)
    lines.push('beside the limits, by itself');
  for (const { of, says } of topic.tells ?? [])
    if (isIt(of)) lines.push(`with the verdict: “${says}”`);
  for (const [asking, { label, results, says }] of Object.entries(topic.askings ?? {}))
    if (results.includes(name) || holes(says, isIt).length > 0)
      lines.push(`asked as \`${asking}\`: “${label}”`);
  for (const [asking, text] of Object.entries(topic.everybody ?? {}))
    if (holes(text, isIt).length > 0) lines.push(`to everybody, \`${asking}\``);
  for (const [other, finding] of Object.entries(topic.findings))
    if (holes(finding, isIt).length > 0) lines.push(`in the words of the finding \`${other}\``);
  for (const [how, text] of Object.entries(topic.how ?? {}))
    if (holes(text, isIt).length > 0) lines.push(`in how it is done, \`${how}\``);
  if (kind === 'limits') lines.push('as a bar of every answer that asks it');
  if (kind === 'findings' && topic.findings[id].first) lines.push('first, as it is a danger');
  return lines;
}
