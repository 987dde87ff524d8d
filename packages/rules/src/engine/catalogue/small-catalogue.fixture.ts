import type { Catalogue } from '../define/catalogue';
import { part } from '../define/topic';

const source = { class: 'invented', cite: 'Made up for the tests' } as const;

/**
 * Two boats in three years.
 *
 *     sail needs mast (a or b); a and b exclude one another; b is standard from 2002
 */
export const boats: Catalogue = {
  label: 'the catalogue of boats',
  source,
  model: 'boat.name',
  year: 'boat.year',
  wishes: { sail: 'wish.sail', mast: 'wish.mast', spar: 'wish.spar', anchor: 'wish.anchor' },
  years: ['2001', '2002', '2003'],
  figures: { weight: 'lb', hull: 'lb' },
  placeUnit: 'ft',
  models: {
    gig: {
      label: 'Gig',
      sold: ['2001', '2003'],
      offers: 'small',
      figures: { hull: 100 },
      inYear: { '2003': { hull: 130 } },
      places: { bow: 6, stern: -4 },
    },
    punt: {
      label: 'Punt',
      sold: ['2002', '2003'],
      offers: 'plain',
      figures: { hull: 60 },
      places: { bow: 5, stern: -5 },
    },
  },
  options: {
    sail: { label: 'Sail', figures: { weight: 8 }, place: 'bow' },
    mast: { label: 'Mast', figures: { weight: 20 }, place: 'bow' },
    spar: { label: 'Spar', figures: { weight: 30 }, place: 'stern' },
    anchor: { label: 'Anchor', figures: { weight: 12 }, place: 'bow' },
  },
  offers: {
    small: [
      { option: 'sail', as: 'optional', from: '2001' },
      { option: 'mast', as: 'optional', from: '2001' },
      { option: 'spar', as: 'optional', from: '2001', to: '2002' },
      { option: 'spar', as: 'standard', from: '2003' },
      { option: 'anchor', as: 'optional', from: '2002' },
    ],
    plain: [{ option: 'anchor', as: 'optional', from: '2002' }],
  },
  rules: [
    { kind: 'requires', option: 'sail', others: ['mast', 'spar'] },
    { kind: 'excludes', option: 'mast', others: ['spar'] },
  ],
  rows: { list: 'boat.extras', figures: { weight: 'weight' }, place: 'ahead' },
};

const wish = (label: string) =>
  ({ kind: 'yes-no', label, ask: `${label}?`, where: 'told' }) as const;

const column = (label: string, unit: string) =>
  ({ label, unit, least: -1000, most: 1000, required: false }) as const;

/** The facts that the catalogue reads, and one formula of each kind of question. */
export const boatPart = part({
  facts: {
    'boat.name': {
      kind: 'choice',
      options: ['gig', 'punt'],
      label: 'Boat',
      ask: 'Which?',
      where: 'told',
    },
    'boat.year': {
      kind: 'choice',
      options: ['2001', '2002', '2003'],
      label: 'Year',
      ask: 'When?',
      where: 'told',
    },
    'wish.sail': wish('Sail'),
    'wish.mast': wish('Mast'),
    'wish.spar': wish('Spar'),
    'wish.anchor': wish('Anchor'),
    'boat.extras': {
      kind: 'rows',
      columns: { weight: column('Weight', 'lb'), ahead: column('Ahead', 'ft') },
      label: 'Extras',
      ask: 'What else?',
      where: 'told',
      silent: { value: 'none', says: 'Nothing else.', source },
    },
  },
  formulas: {
    'boat.hull': { label: 'Hull', unit: 'lb', is: 'figure(boats, hull)', source },
    'boat.all': {
      label: 'All',
      unit: 'lb',
      is: 'boat.hull + sum(boat.extras.weight)',
      source,
    },
    'boat.moment': {
      label: 'Moment',
      unit: 'lb·ft',
      is: 'sum(boat.extras.weight * boat.extras.ahead)',
      source,
    },
    'boat.wishes': { label: 'Wishes', unit: '', is: 'wishes(boats)', source },
    'boat.met': { label: 'Met', unit: '', is: 'wishesMet(boats)', source },
    'boat.imposed': { label: 'Imposed', unit: '', is: 'imposed(boats)', source },
    'boat.brought': { label: 'Brought', unit: '', is: 'brought(boats)', source },
    'boat.choices': { label: 'Choices', unit: '', is: 'choices(boats)', source },
    'boat.builds': { label: 'Builds', unit: '', is: 'builds(boats)', source },
    'boat.inAll': { label: 'In all', unit: '', is: 'buildsInAll(boats)', source },
    'boat.punts': { label: 'Punts', unit: '', is: "builds(boats, 'punt')", source },
    'boat.models': { label: 'Models', unit: '', is: 'modelsOrderable(boats)', source },
    'boat.sold': { label: 'Sold', unit: 'yes-no', is: 'sold(boats)', source },
    'boat.missing': { label: 'Missing', unit: '', is: 'wishesMissing(boats)', source },
    'boat.clash': { label: 'Clash', unit: 'yes-no', is: 'clash(boats)', source },
    'boat.can': { label: 'Can be had', unit: 'yes-no', is: 'orderable(boats)', source },
    'boat.canFirst': {
      label: 'Could be had in 2001',
      unit: 'yes-no',
      is: "orderableIn(boats, '2001')",
      source,
    },
    'boat.hasSpar': { label: 'Spar built', unit: 'yes-no', is: "inBuild(boats, 'spar')", source },
    'boat.withSpar': {
      label: 'Spar there',
      unit: 'yes-no',
      is: "comesWith(boats, 'spar')",
      source,
    },
    'boat.sparSince': {
      label: 'Spar since 2003',
      unit: 'yes-no',
      is: "becameStandard(boats, 'spar', '2003')",
      source,
    },
  },
});
