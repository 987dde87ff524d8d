const only = (name, from, to, comment) => ({
  name,
  comment,
  severity: 'error',
  from: { path: from, pathNot: '\\.test\\.ts$' },
  to,
});

const rules = '^packages/rules/src';
const later = (layers) => `${rules}/engine/(${layers})/`;

module.exports = {
  forbidden: [
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    only(
      'quantity-first',
      `${rules}/quantity/`,
      { path: `${rules}/(engine|topics)/` },
      'quantity imports no other folder',
    ),
    only(
      'engine-before-topics',
      `${rules}/engine/`,
      { path: `${rules}/topics/` },
      'the engine knows no topic',
    ),
    only(
      'define-first',
      `${rules}/engine/define/`,
      { path: later('formula|condition|check|answer|trace') },
      'define ← the rest',
    ),
    only(
      'formula-second',
      `${rules}/engine/formula/`,
      { path: later('condition|check|answer|trace') },
      'formula ← condition',
    ),
    only(
      'condition-third',
      `${rules}/engine/condition/`,
      { path: later('check|answer|trace') },
      'condition ← check',
    ),
    only(
      'check-fourth',
      `${rules}/engine/check/`,
      { path: later('answer|trace') },
      'check ← answer',
    ),
    only(
      'rules-below',
      rules,
      { path: '^(packages/(casebook|sweep|cli)|notebook)/' },
      'rules import no package of ours',
    ),
    only(
      'casebook-below',
      '^packages/casebook/',
      { path: '^(packages/(sweep|cli)|notebook)/' },
      'casebook ← cli, notebook',
    ),
    only(
      'apart',
      '^packages/cli/',
      { path: '^notebook/' },
      'command line and notebook stand apart',
    ),
    only(
      'apart-too',
      '^notebook/',
      { path: '^packages/cli/' },
      'command line and notebook stand apart',
    ),
    only(
      'one-rules-engine',
      `^(packages|notebook)/(?!rules/src/engine/condition/engine\\.ts)`,
      { path: 'node_modules/json-rules-engine' },
      'json-rules-engine stands behind one module',
    ),
    only(
      'one-parser',
      `^(packages|notebook)/(?!rules/src/engine/formula/parse\\.ts)`,
      { path: 'node_modules/jsep' },
      'formulas are parsed in one module',
    ),
    only(
      'state-without-lit',
      '^notebook/src/state/',
      { path: 'node_modules/(lit|lit-html|lit-element|@lit)/' },
      'state is plain',
    ),
    {
      name: 'resolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['source', 'import', 'require', 'node', 'default', 'types'],
    },
  },
};
