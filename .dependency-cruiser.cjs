// Who may import whom: quantity ← engine ← trade ← topics ← casebook ← sweep ← cli, notebook.
const rules = '^packages/rules/src';
const engine = `${rules}/engine`;
const entries = `${rules}/(index|quantity/index|engine/index|topics/[^/]+/index)\\.ts$`;

/** A test beside its module may reach as far as it needs to state its promise. */
const test = '\\.test\\.ts$';

/** [what holds, who, may not import what, unless it is this] */
const never = [
  ['quantity-imports-no-other-folder', `${rules}/quantity/`, `${rules}/(engine|trade|topics)/`],
  ['engine-knows-no-trade', `${engine}/`, `${rules}/(trade|topics)/`],
  ['trade-knows-no-topic', `${rules}/trade/`, `${rules}/topics/`],
  [
    'no-topic-imports-a-topic',
    `${rules}/topics/([^/]+)/`,
    `${rules}/topics/[^/]+/`,
    `${rules}/topics/$1/`,
  ],
  ['words-know-numbers-alone', `${engine}/words/`, `${engine}/(?!words/)`],
  ['define-comes-first', `${engine}/define/`, `${engine}/(formula|condition|check|answer|trace)/`],
  ['values-know-numbers-alone', `${engine}/value/`, `${engine}/(?!value/)`],
  ['grammar-before-kinds', `${engine}/formula/grammar/`, `${engine}/formula/(?!grammar/)`],
  ['kinds-before-their-table', `${engine}/formula/kinds/`, `${engine}/formula/(?!grammar/|kinds/)`],
  [
    'a-kind-knows-no-other',
    `${engine}/formula/kinds/([^/]+)\\.ts`,
    `${engine}/formula/kinds/`,
    `${engine}/formula/kinds/$1\\.ts`,
  ],
  ['formula-comes-second', `${engine}/formula/`, `${engine}/(condition|check|answer|trace)/`],
  ['condition-comes-third', `${engine}/condition/`, `${engine}/(check|answer|trace)/`],
  ['check-comes-fourth', `${engine}/check/`, `${engine}/(answer|trace)/`],
  ['rules-import-no-package-of-ours', rules, '^(packages/(casebook|sweep|cli)|notebook)/'],
  ['casebook-below-sweep', '^packages/casebook/', '^(packages/(sweep|cli)|notebook)/'],
  ['sweep-below-cli-and-notebook', '^packages/sweep/', '^(packages/cli|notebook)/'],
  ['cli-apart-from-notebook', '^packages/cli/', '^notebook/'],
  ['notebook-apart-from-cli', '^notebook/', '^packages/cli/'],
  ['rules-by-their-entries', '^(packages/(casebook|sweep|cli)|notebook)/', `${rules}/`, entries],
  [
    'casebook-by-its-entry',
    '^(packages/(sweep|cli)|notebook)/',
    '^packages/casebook/src/',
    '/src/(index|front-yaml)\\.ts$',
  ],
  ['notebook-state-is-plain', '^notebook/src/state/', '(^|/)(lit|lit-html|lit-element|@lit)(/|$)'],
];

/** [package, the one module that may import it] */
const behindOneModule = [
  ['json-rules-engine', 'packages/rules/src/engine/condition/library\\.ts$'],
];

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    ...never.map(([name, from, path, pathNot]) => ({
      name,
      severity: 'error',
      from: { path: from, pathNot: test },
      to: pathNot ? { path, pathNot } : { path },
    })),
    ...behindOneModule.map(([name, module]) => ({
      name: `${name}-behind-one-module`,
      severity: 'error',
      from: { path: '^(packages|notebook)/', pathNot: `^${module}` },
      to: { path: `(^|/)${name}(/|$)`, dependencyTypesNot: ['local'] },
    })),
    {
      name: 'everything-resolves',
      severity: 'error',
      from: {},
      // What a build writes is not there before the first.
      to: { couldNotResolve: true, pathNot: '^(virtual:|\\./dist/)' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(packages/[^/]+|notebook)/(dist|\\.types)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['source', 'import', 'require', 'node', 'default', 'types'],
    },
  },
};
