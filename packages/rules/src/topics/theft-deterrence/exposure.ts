import type { Decision } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { exposed } from '../../trade/bibliography/theft-deterrence';
import { policy } from '../../trade/papers/policy';

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
  on: ['place.kind', 'parked.isLong', 'worth.isMuch'],
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
    high: {
      label: 'much',
      says: 'It is much exposed: held as fast as the place allows, and found again.',
    },
  },
  source: exposed,
};

/** Where it stands, how long, and what it and its contents are worth. */
export const exposure = part({
  facts: {
    'place.kind': {
      kind: 'choice',
      label: 'Where it stands',
      noun: 'where it stands',
      options: ['storage-lot', 'driveway', 'street', 'campsite', 'rest-stop'],
      ask: 'Where does the trailer stand: a storage lot, a driveway, the street, a campsite, a rest stop?',
      where: 'told by the owner',
    },
    'parked.days': {
      kind: 'quantity',
      label: 'How long it stands there unwatched',
      noun: 'how long it stands there',
      unit: 'd',
      least: 0,
      most: 1000,
      ask: 'For how long does the trailer stand there without anyone of yours looking?',
      where: 'told by the owner',
    },
    'rig.value': policy.facts['rig.value'],
    'contents.value': {
      kind: 'quantity',
      label: 'What is in it and on it',
      noun: 'what stays in it',
      unit: 'USD',
      least: 0,
      most: 500_000,
      ask: 'What are the things worth that stay in and on the trailer?',
      where: 'a list, room by room',
      silent: { value: 0, says: 'Nothing of worth stays in it.', source: custom, quiet: true },
    },
    'rig.hitched': {
      kind: 'yes-no',
      label: 'It stays hitched to the vehicle',
      noun: 'whether it stays hitched to the vehicle',
      ask: 'Does the trailer stay hitched to the vehicle?',
      where: 'told by the owner',
      silent: { value: 'no', says: 'It stands unhitched.', source: custom, quiet: true },
    },
  },
  parameters: {
    'parked.long': {
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
    'parked.isLong': {
      label: 'It stands long',
      unit: 'yes-no',
      is: 'parked.days > parked.long',
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
    'place.takesAnchor': {
      label: 'The ground there takes an anchor, and it is allowed',
      unit: 'yes-no',
      is: "place.kind == 'driveway' || place.kind == 'storage-lot'",
      source: exposed,
    },
    'place.isHeard': {
      label: 'Somebody hears an alarm there',
      unit: 'yes-no',
      is: "place.kind != 'storage-lot' && exposed.some",
      source: exposed,
    },
    'place.isLit': {
      label: 'It is one’s own ground, and exposed',
      unit: 'yes-no',
      is: "place.kind == 'driveway' && exposed.some",
      source: exposed,
    },
    'place.isWatched': {
      label: 'Somebody can look by, and it is exposed',
      unit: 'yes-no',
      is: "place.kind != 'rest-stop' && exposed.some",
      source: exposed,
    },
    'place.isSleptIn': {
      label: 'People may sleep in it there',
      unit: 'yes-no',
      is: "place.kind == 'driveway' || place.kind == 'campsite' || place.kind == 'rest-stop'",
      source: exposed,
    },
    'exposed.anchored': {
      label: 'It is much exposed, unhitched, and can be anchored',
      unit: 'yes-no',
      is: 'exposed.muchUnhitched && place.takesAnchor',
      source: exposed,
    },
    'exposed.unanchored': {
      label: 'It is much exposed, unhitched, and cannot be anchored',
      unit: 'yes-no',
      is: 'exposed.muchUnhitched && !place.takesAnchor',
      source: exposed,
    },
    'assumed.contents': {
      label: 'Nobody said what is in it',
      unit: 'yes-no',
      is: 'given(rig.value) && !given(contents.value)',
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
