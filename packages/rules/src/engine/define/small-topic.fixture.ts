import { ruleSet } from './looked-at';
import type { Fact, Formula, Source, Topic } from './shapes';

export const source: Source = { class: 'invented', cite: 'A shelf of our own' };

const words = { label: 'A fact', ask: 'How much?', where: 'on the box' };
const weight = { ...words, kind: 'quantity', unit: 'lb', least: 0, most: 1000 } as const;
const place = { label: 'Place', unit: 'in', least: -100, most: 100, required: false } as const;

export const facts: Readonly<Record<string, Fact>> = {
  'shelf.rating': weight,
  'shelf.span': { ...words, kind: 'quantity', unit: 'in', least: 1, most: 200 },
  'shelf.share': { ...words, kind: 'quantity', unit: '%', least: 0, most: 100 },
  'shelf.kind': { ...words, kind: 'choice', options: ['oak', 'pine'] },
  'shelf.braced': { ...words, kind: 'yes-no' },
  'box.weight': weight,
  'box.lid': { ...weight, silent: { value: 0, says: 'No lid is counted.', source } },
  boxes: {
    ...words,
    kind: 'rows',
    columns: { weight: { ...place, label: 'Weight', unit: 'lb', least: 0, required: true }, place },
    silent: { value: 'none', says: 'No boxes are counted.', source },
  },
};

export const formula = (is: string, unit = 'lb'): Formula => ({ label: is, unit, is, source });

/** A shelf that carries boxes: small, and with something of everything a topic may hold. */
export const shelf: Topic = ruleSet<Topic>({
  id: 'shelf',
  version: '1.0.0',
  title: 'Shelf',
  question: 'Does the shelf hold?',
  facts,
  parameters: {
    'margin.shelf': {
      label: 'Margin',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [0, 20],
      source,
    },
  },
  tables: {
    sag: {
      label: 'What a span carries',
      keyUnit: 'in',
      valueUnit: 'lb',
      rows: [
        [10, 100],
        [20, 60],
        [40, 20],
      ],
      source,
    },
  },
  formulas: {
    'load.total': formula('box.weight + box.lid + sum(boxes.weight)'),
    'load.moment': formula('sum(boxes.weight * boxes.place)', 'lb·in'),
    'load.spared': formula('box.weight - box.weight * shelf.share'),
    'load.part': formula('box.weight / (box.weight + shelf.rating)', '1'),
    'span.carries': formula('lookup(sag, shelf.span)'),
    'kind.strength': formula("choose(shelf.kind == 'oak', shelf.rating, shelf.rating / 2)"),
  },
  limits: {
    'all-boxes': {
      label: 'Boxes',
      short: 'the shelf',
      used: 'load.total',
      limit: 'kind.strength',
      margin: 'margin.shelf',
      source,
    },
  },
  findings: {
    'not-braced': {
      label: 'Braces',
      askedBy: ['shelf.braced'],
      stop: {
        when: { all: [{ fact: 'shelf.braced', operator: 'equal', value: 'no' }] },
        wrong: 'It has no braces.',
      },
      otherwise: 'It is braced.',
      source,
    },
  },
  outcomes: {
    ok: { id: 'holds', words: 'holds', sentence: 'It holds.' },
    if: { id: 'holds-if', words: 'holds if', sentence: 'It holds' },
    care: { id: 'holds-just', words: 'just holds', sentence: 'It just holds.' },
    stop: { id: 'breaks', words: 'breaks', sentence: 'It breaks.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: ['load.total'],
  assumptions: [],
  cautions: [{ says: 'Look before you load.', source }],
});
