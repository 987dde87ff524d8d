import { describe, expect, test } from 'vitest';
import { publish } from '../answer/stock';
import { defineTopic } from '../check/define';
import { compareVersions, isVersion } from '../define/order';
import type { Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { compareTopics } from './compare';
import { compareVerdicts } from './effects';
import { topicFromPublished } from './published';
import { sayChange } from './words';

const told = (was: Topic, now: Topic): readonly string[] =>
  compareTopics(was, now).map((change) => `${change.part}: ${sayChange(change, now)}`);

const { 'load.spared': _spared, ...fewer } = shelf.formulas;
const [margin, limit, braces] = [
  shelf.parameters['margin.shelf'],
  shelf.limits['all-boxes'],
  shelf.findings['not-braced'],
];
if (!margin || !limit || !braces) throw new Error('The shelf has lost a part.');

const memory = { class: 'from-memory', cite: 'An old notebook' } as const;

describe('every entry that is new, gone or changed is told, in the words of its part', () => {
  test.each<[string, Topic, readonly string[]]>([
    [
      'a number of the trade gets a later value',
      {
        ...shelf,
        parameters: {
          'margin.shelf': {
            ...margin,
            values: [...margin.values, { from: '2026-07-01', value: 15 }],
          },
        },
      },
      [
        'parameters: Margin (margin.shelf): the value was 10 % since 2020-01-01, is 10 % since 2020-01-01, 15 % since 2026-07-01.',
      ],
    ],
    [
      'a dealer’s range',
      { ...shelf, parameters: { 'margin.shelf': { ...margin, range: [5, 20] } } },
      [
        'parameters: Margin (margin.shelf): what a dealer may choose was 0 % to 20 %, is 5 % to 20 %.',
      ],
    ],
    [
      'a formula and its unit',
      {
        ...shelf,
        formulas: {
          ...shelf.formulas,
          'load.part': { ...formula('box.weight / shelf.rating', '%') },
        },
      },
      [
        'formulas: box.weight / shelf.rating (load.part): its name was “box.weight / (box.weight + shelf.rating)”, is “box.weight / shelf.rating”; its unit was 1, is %; the formula was “box.weight / (box.weight + shelf.rating)”, is “box.weight / shelf.rating”.',
      ],
    ],
    [
      'a formula that is gone',
      { ...shelf, formulas: fewer },
      [
        'formulas: box.weight - box.weight * shelf.share (load.spared) is gone: the formula “box.weight - box.weight * shelf.share”; its unit lb; its source invented: A shelf of our own.',
      ],
    ],
    [
      'a new limit',
      { ...shelf, limits: { ...shelf.limits, lids: { ...limit, label: 'Lids', used: 'box.lid' } } },
      [
        'limits: Lids (lids) is new: what is used “box.lid”; what that is held against “kind.strength”; its source invented: A shelf of our own.',
      ],
    ],
    [
      'a row of a table',
      { ...shelf, tables: { sag: { ...shelf.tables.sag, ...sagWith([40, 10]) } } },
      [
        'tables: What a span carries (sag): the rows was [10,100], [20,60], [40,20], is [10,100], [20,60], [40,10].',
      ],
    ],
    [
      'what stops it',
      {
        ...shelf,
        findings: {
          'not-braced': {
            ...braces,
            stop: {
              when: { any: [{ fact: 'shelf.kind', operator: 'notEqual', value: 'oak' }] },
              wrong: 'It is soft.',
            },
          },
        },
      },
      [
        'findings: Braces (not-braced): what stops it was shelf.braced equal no, is (shelf.kind not equal oak); the sentence said then was “It has no braces.”, is “It is soft.”.',
      ],
    ],
    [
      'a caution and its source',
      { ...shelf, cautions: [...shelf.cautions, { says: 'Mind your head.', source: memory }] },
      [
        'cautions: “Mind your head.” is new: its source from-memory: An old notebook.',
        'sources: from-memory: An old notebook is new.',
      ],
    ],
    [
      'the most a fact may be',
      { ...shelf, facts: { ...shelf.facts, 'box.weight': heavyBox(2000) } },
      ['facts: A fact (box.weight): the most it may be was 1,000 lb, is 2,000 lb.'],
    ],
    ['the title', { ...shelf, title: 'Shelves' }, ['topic: title: it was “Shelf”, is “Shelves”.']],
    ['the version alone', { ...shelf, version: '1.0.1' }, []],
  ])('%s', (_, now, says) => {
    expect(told(shelf, now)).toEqual(says);
  });

  test('the other way round what was new is gone', () => {
    const more: Topic = defineTopic<Topic>({
      ...shelf,
      formulas: { ...shelf.formulas, 'box.twice': formula('box.weight * 2') },
    });
    expect(compareTopics(shelf, more).map(({ kind }) => kind)).toEqual(['added']);
    expect(compareTopics(more, shelf).map(({ kind }) => kind)).toEqual(['removed']);
  });

  test('an order that decides which of two equal limits binds', () => {
    const two: Topic = defineTopic<Topic>({
      ...shelf,
      limits: { ...shelf.limits, lids: { ...limit, used: 'box.lid' } },
    });
    const turned: Topic = defineTopic<Topic>({
      ...two,
      limits: Object.fromEntries(Object.entries(two.limits).toReversed()),
    });
    expect(told(two, turned)).toEqual([
      'limits: Order: the order was all-boxes, lids, is lids, all-boxes.',
    ]);
  });
});

function sagWith(last: readonly [number, number]) {
  const sag = shelf.tables.sag;
  if (!sag) throw new Error('The shelf has no table.');
  return { ...sag, rows: [...sag.rows.slice(0, 2), last] };
}

function heavyBox(most: number) {
  const box = shelf.facts['box.weight'];
  if (box?.kind !== 'quantity') throw new Error('The box weighs nothing.');
  return { ...box, most };
}

describe('what a change does to a case', () => {
  const facts = { 'box.weight': '50 lb', 'shelf.rating': '100 lb', 'shelf.kind': 'oak' };
  const asked = { facts: { ...facts, 'shelf.braced': 'yes' }, asOf: '2026-11-01' };

  test('a narrower table moves nothing that does not look it up', () => {
    const now: Topic = defineTopic<Topic>({ ...shelf, tables: { sag: { ...sagWith([40, 10]) } } });
    expect(compareVerdicts(shelf, now, asked)).toEqual({
      was: 'holds',
      now: 'holds',
      differences: [],
      leftOut: [],
    });
  });

  test('the changed formula stands as the cause, one that is not in the reasoning does not', () => {
    // By hand: 50 lb twice is 100 lb, at the limit of 100 lb and over the 90 lb from which care is due.
    const now: Topic = defineTopic<Topic>({
      ...shelf,
      formulas: {
        ...shelf.formulas,
        'load.total': {
          ...formula('2 * box.weight + box.lid + sum(boxes.weight)'),
          label: 'All boxes',
        },
        'span.carries': { ...formula('lookup(sag, shelf.span) / 2'), label: 'Span' },
      },
    });
    expect(compareVerdicts(shelf, now, asked).differences).toEqual([
      {
        name: 'verdict',
        label: 'The verdict',
        was: 'holds',
        now: 'just holds',
        because: ['All boxes (load.total)'],
      },
      {
        name: 'limit.all-boxes',
        label: 'Boxes',
        was: 'ok',
        now: 'care',
        because: ['All boxes (load.total)'],
      },
    ]);
  });

  test('a fact that the older version does not know is left out there, and said', () => {
    const { 'shelf.braced': _braced, ...known } = shelf.facts;
    const older: Topic = defineTopic<Topic>({
      ...shelf,
      version: '0.9.0',
      facts: known,
      findings: {},
    });
    const effect = compareVerdicts(older, shelf, asked);
    expect(effect.leftOut).toEqual(['shelf.braced']);
    expect(effect.differences).toEqual([
      {
        name: 'finding.not-braced',
        label: 'Braces',
        was: 'not there',
        now: 'ok',
        because: ['A fact (shelf.braced)', 'Braces (not-braced)'],
      },
    ]);
  });

  test('a case that one of the two refuses is told with the reason', () => {
    const now: Topic = defineTopic<Topic>({
      ...shelf,
      facts: { ...shelf.facts, 'box.weight': heavyBox(40) },
    });
    const effect = compareVerdicts(shelf, now, asked);
    expect(effect).toMatchObject({ was: 'holds', differences: [] });
    expect(effect.refused).toMatch(
      /^By 1\.0\.0 it cannot be asked: `box\.weight`: 50 lb is outside/,
    );
  });
});

describe('a rule set from its JSON', () => {
  const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

  test('is the rule set it was, and publishes the same', () => {
    const back = topicFromPublished(plain(publish(shelf)));
    expect(compareTopics(shelf, back)).toEqual([]);
    expect(JSON.stringify(publish(back))).toBe(JSON.stringify(publish(shelf)));
  });

  test.each<[string, unknown, RegExp]>([
    ['nothing', null, /^the whole: null stands there; give its parts by name/],
    ['no formulas', { ...shelf, formulas: undefined }, /^formulas: it is missing/],
    [
      'a parameter without its values',
      { ...shelf, parameters: { share: { label: 'Share', unit: '%', source } } },
      /^parameters\.share\.values: .* give a list\.$/,
    ],
    [
      'two parts that are not there',
      { ...shelf, headline: undefined, tables: undefined },
      /^tables: .* \{\} where it has none\.\nheadline: .* give a list\.$/,
    ],
    [
      'a word of a choice without quotes',
      {
        ...shelf,
        facts: {
          ...shelf.facts,
          'wood.state': {
            kind: 'choice',
            label: 'State',
            ask: 'Wet?',
            where: 'there',
            options: ['dry', 'wet'],
          },
        },
        formulas: {
          ...shelf.formulas,
          'load.total': { ...formula('choose(wood.state == wet, 1, 0)') },
        },
      },
      /“wet” is a word of a choice; put it in quotes, 'wet'/,
    ],
    ['a version that is none', { ...shelf, version: '1.0' }, /^version: /],
    [
      'a unit that is no text',
      { ...shelf, formulas: { 'load.total': { ...formula('1'), unit: 5 } } },
      /^formulas\.load\.total\.unit: /,
    ],
    [
      'an item without a source class',
      { ...shelf, cautions: [{ says: 'So.', source: { ...source, class: 'hearsay' } }] },
      /no source class “hearsay”/,
    ],
  ])('%s is refused with the place', (_, value, says) => {
    expect(() => topicFromPublished(value)).toThrow(says);
  });
});

test('versions are ordered by their numbers, not by their letters', () => {
  expect(['1.10.0', '1.9.9', '0.12.3', '1.10.1'].toSorted(compareVersions)).toEqual([
    '0.12.3',
    '1.9.9',
    '1.10.0',
    '1.10.1',
  ]);
  expect(['1.0', '1.0.0', 'v1.0.0', '../1.0.0', ''].filter(isVersion)).toEqual(['1.0.0']);
});
