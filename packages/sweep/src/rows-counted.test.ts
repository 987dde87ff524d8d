import { towFit } from '@tarebook/rules';
import {
  answerNow,
  compiledOf,
  defineTopic,
  type FactsGiven,
  type Node,
  namesIn,
  type Topic,
} from '@tarebook/rules/engine';
import { expect, test } from 'vitest';

/**
 * Whoever may be aboard, and whatever may be loaded, stands in the yard as a row from nothing up to its
 * weight. A row of nothing is no row only as long as nothing that is judged counts rows.
 */
const topic: Topic = towFit;
const lists = ['load.occupants', 'trailer.cargo'];

/** All texts in something, however deep. */
const textsIn = (of: unknown): readonly string[] =>
  typeof of === 'string'
    ? [of]
    : typeof of === 'object' && of !== null
      ? Object.values(of).flatMap(textsIn)
      : [];

/** A node of a formula, and all below it. */
const nodesIn = (of: unknown): readonly Node[] =>
  typeof of === 'object' && of !== null
    ? [...('kind' in of ? [of as Node] : []), ...Object.values(of).flatMap(nodesIn)]
    : [];

const isCount = (node: Node): boolean => node.kind === 'count' && lists.includes(node.list);

/** The formulas that a limit or a finding stands on and that count rows. */
function countingIn(of: Topic): {
  readonly judged: number;
  readonly counting: readonly string[];
} {
  const { formulas } = compiledOf(of);
  const seen = new Set<string>();
  const open = [...textsIn([of.limits, of.findings, of.decisions])];
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    const formula = formulas.get(name);
    if (!formula || seen.has(name)) continue;
    seen.add(name);
    open.push(...namesIn(formula.node));
  }
  const counting = [...seen].filter((name) => nodesIn(formulas.get(name)?.node).some(isCount));
  return { judged: seen.size, counting };
}

test('nothing that the yard judges counts who is aboard or what is loaded', () => {
  const { judged, counting } = countingIn(topic);
  expect(judged).toBeGreaterThan(40);
  expect(counting).toEqual([]);
});

test.each(lists)('one that did would be found: of %s', (list) => {
  const [formula] = Object.values(topic.formulas);
  const [[id, limit] = []] = Object.entries(topic.limits);
  if (!formula || id === undefined || !limit) throw new Error('There is no formula or limit.');
  const counting = (is: string) =>
    countingIn(
      defineTopic<Topic>({
        ...topic,
        formulas: {
          ...topic.formulas,
          'rows.seen': { ...formula, unit: '1', is },
          'rows.more': { ...formula, unit: 'lb', is: `${limit.used} * rows.seen` },
        },
        limits: { ...topic.limits, [id]: { ...limit, used: 'rows.more' } },
      }),
    ).counting;
  expect(counting(`count(${list})`)).toEqual(['rows.seen']);
});

test.each(lists)('nor does a row of nothing move anything that is judged: of %s', (list) => {
  const facts: FactsGiven = {
    'vehicle.gvwr': '7,000 lb',
    'vehicle.curbWeight': '5,000 lb',
    'vehicle.gcwr': '13,000 lb',
    'vehicle.maxTrailerWeight': '7,000 lb',
    'vehicle.placardPayload': '1,500 lb',
    'trailer.dryWeight': '4,000 lb',
    'trailer.gvwr': '5,500 lb',
  };
  const judged = (rows: number) => {
    const nothing = Array.from({ length: rows }, () => ({ label: 'Nobody', weight: '0 lb' }));
    const one = { label: 'One', weight: '170 lb' };
    const asked = { facts: { ...facts, [list]: [one, ...nothing] }, asOf: '2026-11-01' };
    const { outcome, limits, findings, values } = answerNow(topic, asked);
    return { outcome, limits, findings, values };
  };
  expect(judged(8)).toEqual(judged(0));
});
