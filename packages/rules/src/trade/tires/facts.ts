import { part } from '../../engine/define/topic';
import { dateCode, weighed } from '../bibliography/tires';
import { meantTireFacts, vehicleTireFacts } from '../rig/facts-vehicle-tires';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const index = { kind: 'quantity', unit: '', least: 0, most: 200, exact: true } as const;
const pressure = { kind: 'quantity', unit: 'psi', least: 0, most: 150 } as const;
const size = { kind: 'quantity', unit: 'in', least: 10, most: 60 } as const;
const sidewall = 'the sidewall';
const scale = 'a public scale';

/** What is asked about the tires in question, and where they run. */
export const tireFacts = part({
  facts: {
    ...meantTireFacts.facts,
    'vehicle.type': vehicleTireFacts.facts['vehicle.type'],
    'tire.loadIndex': {
      ...index,
      label: 'Load index, single',
      noun: 'the load index',
      ask: 'What number stands before the speed letter, as the 121 in 121/118R?',
      where: sidewall,
      means: 'A code for a load. Where there are two, the first holds for a tire by itself.',
    },
    'tire.loadIndexDual': {
      ...index,
      label: 'Load index, dual',
      noun: 'the dual load index',
      ask: 'What number stands after the stroke, as 118 of 121/118R?',
      where: sidewall,
      means: 'It holds where two tires share one wheel end.',
    },
    'tire.speedSymbol': {
      kind: 'choice',
      // biome-ignore format: eight a line read like the printed list
      options: [
        'a1', 'a2', 'a3', 'a4', 'a5', 'a6', 'a7', 'a8', 'b', 'c', 'd', 'e', 'f', 'g', 'j', 'k',
        'l', 'm', 'n', 'p', 'q', 'r', 's', 't', 'u', 'h', 'v', 'w', 'y', 'none',
      ],
      scale: true,
      label: 'Speed symbol',
      noun: 'the speed letter',
      ask: 'Which letter follows the load index?',
      where: sidewall,
      means: 'In the order of speed H stands between U and V; no letter at all is “none”.',
    },
    'tire.slowestOther': {
      kind: 'quantity',
      unit: 'mph',
      least: 25,
      most: 190,
      exact: true,
      label: 'Slowest other tire of the rig, spare included',
      noun: 'the slowest other tire',
      ask: 'What is the slowest of the other tires rated for, the spare among them?',
      where: 'speed letters or sidewalls of all tires, the spare’s too',
    },
    'trip.speed': {
      kind: 'quantity',
      unit: 'mph',
      least: 0,
      most: 120,
      label: 'Fastest speed planned',
      noun: 'the speed',
      ask: 'How fast do you mean to go at the most?',
      where: 'told by the owner',
    },
    'tire.codeWeek': {
      kind: 'quantity',
      unit: '',
      least: 1,
      most: 53,
      exact: true,
      label: 'Date code, week',
      ask: 'What are the first two of the four digits at the end of the identification number?',
      where: 'sidewall, in the oval after DOT; it may stand on the inner side only',
    },
    'tire.codeYear': {
      kind: 'quantity',
      unit: '',
      least: 0,
      most: 99,
      exact: true,
      label: 'Date code, year',
      ask: 'What are the last two digits after DOT on the sidewall: the year?',
      where: 'sidewall, in the oval after DOT',
    },
    'tire.codeDigits': {
      kind: 'choice',
      options: ['four', 'three'],
      label: 'Digits of the date code',
      ask: 'Has the date code four digits or three?',
      where: 'sidewall, in the oval after DOT',
      silent: {
        value: 'four',
        says: 'The date code has four digits.',
        source: dateCode,
        quiet: true,
      },
    },
    'tire.diameter': {
      ...size,
      label: 'Diameter of the tire',
      ask: 'What is the tire’s overall diameter?',
      where: 'the tire maker’s table, or a tape',
    },
    'tire.clearance': {
      kind: 'quantity',
      unit: 'in',
      least: 0,
      most: 24,
      label: 'Room around the tire at its tightest',
      noun: 'the room around the tire',
      instead: 'Measure the room around the tire',
      ask: 'How much room is there at the tightest place, with the axle as far up as it goes?',
      where: 'a tape: to the wheel well, the frame and the next tire',
    },
  },
});

/** What a scale or a wheel's own stamp tells. */
export const wheelFacts = part({
  facts: {
    'scale.onAxles': {
      ...weight,
      label: 'Weighed on these axles',
      noun: 'the weight on these axles',
      instead: 'Weigh these axles once more',
      ask: 'What does a scale show under these axles, loaded and hitched?',
      where: scale,
    },
    'scale.wheels': {
      kind: 'rows',
      columns: {
        weight: { label: 'Weight', unit: 'lb', least: 0, most: 20_000, required: true },
      },
      label: 'Weighed wheel by wheel',
      noun: 'the weighed wheels',
      instead: 'Weigh each wheel once more',
      ask: 'Has each wheel been weighed, and what does each carry?',
      where: 'wheel scales; two tires at one wheel end count together',
      silent: { value: 'none', says: 'No wheel was weighed by itself.', source: weighed },
    },
    'wheel.rating': {
      ...weight,
      exact: true,
      label: 'Wheel rating',
      noun: 'the wheel’s rating',
      ask: 'What load is stamped on the wheel?',
      where: 'stamped inside the wheel or behind its cap',
    },
    'wheel.maxPressure': {
      ...pressure,
      exact: true,
      label: 'Most pressure of the wheel',
      noun: 'the wheel’s pressure',
      ask: 'What pressure may the wheel hold?',
      where: 'stamped inside the wheel, or from its maker',
    },
  },
});

/** What is asked about another tire that carries more. */
export const upgradeFacts = part({
  facts: {
    'upgrade.capacity': {
      ...weight,
      exact: true,
      label: 'Load of the other tire',
      noun: 'the other tire’s rating',
      ask: 'What load does the other tire state?',
      where: 'its sidewall or its maker’s table',
    },
    'upgrade.maxPressure': {
      ...pressure,
      exact: true,
      label: 'Pressure the other tire needs for that load',
      ask: 'At what pressure does the other tire state its load?',
      where: 'its sidewall or its maker’s table',
    },
    'upgrade.rimListed': {
      kind: 'yes-no',
      label: 'The other tire is listed for this rim',
      noun: 'whether the other tire is listed for this rim',
      ask: 'Does the tire’s maker list that tire for the width of your rim?',
      where: 'the tire maker’s table; the width is stamped on the wheel',
    },
    'upgrade.diameter': {
      ...size,
      label: 'Diameter of the other tire',
      ask: 'What is the overall diameter of the other tire?',
      where: 'the tire maker’s table',
    },
  },
});
