// A topic of one's own: how much firewood may ride along.
import { defineTopic } from '@tarebook/rules/engine';

const custom = { class: 'house', cite: 'Choice of the Sallowbridge yard' };
const arithmetic = { class: 'common-practice', cite: 'Arithmetic' };

export const firewood = defineTopic({
  id: 'firewood',
  version: '1.0.0',
  title: 'Firewood',
  question: 'How much firewood may ride along?',
  facts: {
    'room.left': {
      kind: 'quantity',
      label: 'Room left in the payload',
      unit: 'lb',
      least: 0,
      most: 5000,
      ask: 'How much room does the payload leave?',
      where: 'the fit check, payload',
    },
    'bundle.count': {
      kind: 'quantity',
      label: 'Bundles of firewood',
      unit: '',
      counted: true,
      least: 0,
      most: 100,
      ask: 'How many bundles are to come along?',
      where: 'told by the owner',
    },
    'bundle.weight': {
      kind: 'quantity',
      label: 'Weight of a bundle',
      unit: 'lb',
      least: 1,
      most: 100,
      ask: 'What does one bundle weigh?',
      where: 'a bathroom scale',
    },
  },
  parameters: {
    'margin.wood': {
      label: 'Margin for wet wood',
      unit: '%',
      values: [{ from: '2026-01-01', value: 20 }],
      range: [10, 40],
      source: custom,
    },
  },
  formulas: {
    'wood.weight': {
      label: 'Weight of the firewood',
      unit: 'lb',
      is: 'bundle.count * bundle.weight',
      source: arithmetic,
    },
  },
  limits: {
    room: {
      label: 'Room for firewood',
      short: 'the room left',
      used: 'wood.weight',
      limit: 'room.left',
      margin: 'margin.wood',
      source: arithmetic,
    },
  },
  findings: {},
  outcomes: {
    ok: { id: 'comes-along', words: 'comes along', sentence: 'The firewood may come along.' },
    if: { id: 'comes-if', words: 'comes along if', sentence: 'The firewood may come along' },
    care: { id: 'just-fits', words: 'just fits', sentence: 'The firewood just fits.' },
    stop: {
      id: 'stays-home',
      words: 'stays home',
      sentence: 'Leave some of the firewood at home.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  tables: {},
  apart: {},
  headline: ['wood.weight'],
  assumptions: [],
  cautions: [{ says: 'Weigh the loaded rig; wood gains weight in the rain.', source: custom }],
});
