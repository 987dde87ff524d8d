import { boatPart, boats } from '../catalogue/small-catalogue.fixture';
import type { Topic } from '../define/shapes';
import { facts, formula, shelf, source } from '../define/small-topic.fixture';
import { findingOf } from '../define/topic';
import type { Mistake } from './problem';
import { shelfWith } from './wrong-topics.fixture';

const { formulas, findings } = shelf;

const wood = {
  label: 'Grade',
  hit: 'unique',
  on: ['shelf.kind', 'shelf.braced'],
  rows: [
    { when: ['oak', '-'], gives: 'good' },
    { when: ['pine', 'yes'], gives: 'good' },
    { when: ['pine', 'no'], gives: 'bad' },
  ],
  results: {
    good: { label: 'Good', says: 'It is good.', level: 'ok' },
    bad: { label: 'Bad', says: 'It is bad.', level: 'care' },
  },
  source,
} as const;

const deciding = (more: object): Topic =>
  shelfWith({
    decisions: { 'wood.grade': { ...wood, ...more } },
    findings: { ...findings, 'wood-grade': findingOf('wood.grade', wood) },
  });
const [oak, braced, bare] = wood.rows;

/** Eighteen yes/no facts have more combinations than a table may. */
const many = Object.fromEntries(
  Array.from({ length: 18 }, (_, i) => [`many.fact${i}`, facts['shelf.braced']]),
);

const simulating = (values: object, steps: unknown = 3): Topic =>
  shelfWith({ simulations: { day: { label: 'Day', steps, states: {}, values, source } } });
const lost = { label: 'Lost', unit: 'lb', is: 'box.weight', source };

const kit = (amounts: object): Topic => {
  const box = { label: 'Box', amounts, because: 'It is asked.', source };
  return shelfWith({
    selections: { kit: { label: 'Kit', amounts: { weight: 'lb' }, items: { box }, source } },
  });
};

const { gig, punt } = boats.models;
const boating = (more: object): Topic =>
  shelfWith({
    ...boatPart,
    ...{ limits: {}, headline: [], findings: {} },
    catalogues: { boats: { ...boats, ...more } },
  });
const asking = (is: string): Topic =>
  shelfWith({
    facts: { ...facts, ...boatPart.facts },
    formulas: { ...formulas, ...boatPart.formulas, 'boat.tried': formula(is) },
    catalogues: { boats },
  });

/** What stands beside the shelf, as it should be. */
export const soundTables = {
  decisions: deciding({}),
  simulations: simulating({ 'day.lost': lost }),
  selections: kit({ weight: 'load.total' }),
  catalogues: asking("figure(boats, 'hull')"),
} satisfies Partial<Record<keyof Topic, Topic>>;

/** For each kind of mistake in tables, simulations and catalogues a rule set that has it. */
export const wrongTables = {
  'not-a-choice': boating({ model: 'boat.extras' }),
  'not-a-list': simulating({}, 'shelf.kind'),
  'not-an-amount': kit({ wieght: 'load.total' }),
  'not-a-simulation': shelfWith({
    formulas: { ...formulas, 'end.load': formula('lastOf(night, box.weight)') },
  }),
  'option-without-number': shelfWith({
    wordTables: { strength: { label: 'Strength', valueUnit: 'lb', values: { oak: 9 }, source } },
    formulas: { ...formulas, 'kind.holds': formula('pick(strength, shelf.kind)') },
  }),
  'words-apart': shelfWith({
    facts: { ...facts, 'box.color': { ...facts['shelf.kind'], options: ['red', 'blue'] } },
    formulas: { ...formulas, 'kind.same': formula('shelf.kind == box.color', 'yes-no') },
  }),
  'entries-of-row': deciding({ rows: [{ when: ['oak'], gives: 'good' }, braced, bare] }),
  'row-to-no-result': deciding({ rows: [{ ...oak, gives: 'goood' }, braced, bare] }),
  'word-of-row': deciding({ rows: [{ when: ['oka', '-'], gives: 'good' }, ...wood.rows] }),
  'result-without-row': deciding({ rows: [oak, braced, { ...bare, gives: 'good' }] }),
  'not-looked-at': deciding({ on: ['shelf.rating', 'shelf.braced'] }),
  'too-many-combinations': shelfWith({
    facts: { ...facts, ...many },
    decisions: { 'wood.grade': { ...wood, on: Object.keys(many) } },
  }),
  'combination-left-out': deciding({ rows: [oak, bare] }),
  'row-in-shadow': deciding({
    ...{ hit: 'first', rows: [...wood.rows, { when: ['oak', 'yes'], gives: 'bad' }] },
  }),
  'rows-overlap': deciding({ rows: [...wood.rows, { when: ['-', 'yes'], gives: 'good' }] }),
  'ranked-units': shelfWith({
    rankings: {
      most: {
        ...{ label: 'Most', first: 'most', source },
        of: {
          load: { by: 'load.total', says: 'the load' },
          span: { by: 'shelf.span', says: 'the span' },
        },
      },
    },
  }),
  'outside-its-name': simulating({ 'night.lost': lost }),
  'not-in-catalogue': asking("figure(boats, 'keel')"),
  'offered-twice': boating({
    offers: {
      ...boats.offers,
      plain: [
        { option: 'anchor', as: 'optional', from: '2002' },
        { option: 'anchor', as: 'standard', from: '2003' },
      ],
    },
  }),
  'named-twice': boating({ rules: [{ kind: 'excludes', option: 'mast', others: ['mast'] }] }),
  'alone-in-rule': boating({ rules: [{ kind: 'excludes', option: 'mast', others: [] }] }),
  'no-model': boating({ models: { gig } }),
  'no-figure-of-model': boating({ models: { gig, punt: { ...punt, figures: {} } } }),
  'no-place-of-model': boating({ models: { gig, punt: { ...punt, places: { bow: 5 } } } }),
  'other-years': boating({ years: ['2001', '2002'] }),
  'not-a-wish': boating({ wishes: { ...boats.wishes, sail: 'boat.name' } }),
  'not-of-catalogue': boating({
    rules: [{ kind: 'requires', option: 'sial', others: ['mast'] }],
  }),
  'not-a-column': boating({ rows: { ...boats.rows, place: 'ahaed' } }),
} satisfies Partial<Record<Mistake, Topic>>;
