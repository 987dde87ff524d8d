import type { Decision } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { exposed } from '../../trade/bibliography/theft-deterrence';

/**
 * How much it is exposed.
 *
 *                      short, little   short, much   long, little   long, much
 *     driveway              low          raised         raised        raised
 *     campsite              low          raised         raised        raised
 *     storage lot          raised        raised         raised         high
 *     rest stop            raised        raised          high          high
 *     street                high          high           high          high
 */
const exposureTable: Decision = {
  label: 'How much it is exposed',
  hit: 'unique',
  on: ['place.kind', 'stay.isLong', 'worth.isMuch'],
  rows: [
    { when: [['driveway', 'campsite'], 'no', 'no'], gives: 'low' },
    { when: [['driveway', 'campsite'], 'no', 'yes'], gives: 'raised' },
    { when: [['driveway', 'campsite'], 'yes', '-'], gives: 'raised' },
    { when: ['storage-lot', 'no', '-'], gives: 'raised' },
    { when: ['storage-lot', 'yes', 'no'], gives: 'raised' },
    { when: ['storage-lot', 'yes', 'yes'], gives: 'high' },
    { when: ['rest-stop', 'no', '-'], gives: 'raised' },
    { when: ['rest-stop', 'yes', '-'], gives: 'high' },
    { when: ['street', '-', '-'], gives: 'high' },
  ],
  results: {
    low: { label: 'little', says: 'It is little exposed: what opens is locked, and it is held.' },
    raised: { label: 'raised', says: 'It is exposed: two things to hold it, and someone to look.' },
    high: { label: 'much', says: 'It is much exposed: held to the ground, and found again.' },
  },
  source: exposed,
};

/** Where it stands, how long, and what it and its contents are worth. */
export const exposure = part({
  facts: {
    'place.kind': {
      kind: 'choice',
      label: 'Where it stands',
      noun: 'the place',
      options: ['storage-lot', 'driveway', 'street', 'campsite', 'rest-stop'],
      ask: 'Where does it stand: a storage lot, a driveway, the street, a campsite, a rest stop?',
      where: 'told by the owner',
    },
    'stay.days': {
      kind: 'quantity',
      label: 'How long it stands there unwatched',
      noun: 'the time it stands there',
      unit: 'd',
      least: 0,
      most: 1000,
      ask: 'For how long does it stand there without anyone of yours looking?',
      where: 'told by the owner',
    },
    'rig.value': {
      kind: 'quantity',
      label: 'What the trailer is worth today',
      noun: 'what it is worth today',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      ask: 'What would a like trailer cost today?',
      where: 'offers of like trailers, of the same year and state',
    },
    'contents.value': {
      kind: 'quantity',
      label: 'What is in it and on it',
      unit: 'USD',
      least: 0,
      most: 500_000,
      ask: 'What are the things worth that stay in it and on it?',
      where: 'a list, room by room',
      silent: { value: 0, says: 'Nothing of worth stays in it.', source: custom, quiet: true },
    },
    'rig.hitched': {
      kind: 'yes-no',
      label: 'It stays hitched to the vehicle',
      noun: 'whether it stays hitched to the vehicle',
      ask: 'Does it stay hitched to the vehicle?',
      where: 'told by the owner',
      silent: { value: 'no', says: 'It stands unhitched.', source: custom, quiet: true },
    },
  },
  parameters: {
    'stay.long': {
      label: 'From more than so long on it stands long',
      unit: 'd',
      values: [{ from: '2020-01-01', value: 7 }],
      range: [1, 60],
      source: exposed,
    },
    'worth.much': {
      label: 'From more than so much on it is worth much',
      unit: 'USD',
      values: [{ from: '2020-01-01', value: 25_000 }],
      range: [2_000, 200_000],
      source: exposed,
    },
  },
  formulas: {
    'worth.all': {
      label: 'Trailer and what is in it',
      unit: 'USD',
      is: 'rig.value + contents.value',
      source: exposed,
    },
    'stay.isLong': {
      label: 'It stands long',
      unit: 'yes-no',
      is: 'stay.days > stay.long',
      source: exposed,
    },
    'worth.isMuch': {
      label: 'It is worth much',
      unit: 'yes-no',
      is: 'worth.all > worth.much',
      source: exposed,
    },
    'exposed.some': {
      label: 'It is exposed, or much exposed',
      unit: 'yes-no',
      is: "theft.exposure != 'low'",
      source: exposed,
    },
    'exposed.much': {
      label: 'It is much exposed',
      unit: 'yes-no',
      is: "theft.exposure == 'high'",
      source: exposed,
    },
    'exposed.unhitched': {
      label: 'It stands unhitched',
      unit: 'yes-no',
      is: "rig.hitched == 'no'",
      source: exposed,
    },
    'exposed.someUnhitched': {
      label: 'It is exposed and stands unhitched',
      unit: 'yes-no',
      is: 'exposed.some && exposed.unhitched',
      source: exposed,
    },
    'exposed.muchUnhitched': {
      label: 'It is much exposed and stands unhitched',
      unit: 'yes-no',
      is: 'exposed.much && exposed.unhitched',
      source: exposed,
    },
    'assumed.unhitched': {
      label: 'Nobody said whether it stays hitched',
      unit: 'yes-no',
      is: 'given(place.kind) && !given(rig.hitched)',
      source: exposed,
    },
  },
  decisions: { 'theft.exposure': exposureTable },
});
