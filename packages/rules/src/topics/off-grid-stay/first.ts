import { part } from '../../engine/define/topic';
import { house } from '../../trade/bibliography/common';
import { balance } from '../../trade/bibliography/off-grid-stay';

const lasts = {
  fresh: 'fresh.days',
  gray: 'gray.days',
  black: 'black.lasts',
  battery: 'battery.lasts',
  gas: 'gas.lasts',
} as const;

/** The longest stay, with some of what lasts put differently. */
const longestWith = (changed: Partial<Record<keyof typeof lasts, string>>): string =>
  `min(${Object.values({ ...lasts, ...changed }).join(', ')})`;

/** Whether nothing else ends the stay as early. */
const endsWith = (store: keyof typeof lasts) =>
  ({
    label: `It is the ${store} that ends the stay`,
    unit: 'yes-no',
    is: Object.entries(lasts)
      .filter(([other]) => other !== store)
      .map(([, other]) => `${lasts[store]} < ${other}`)
      .join(' && '),
    source: balance,
  }) as const;

const gained = (label: string, changed: Parameters<typeof longestWith>[0]) =>
  ({
    label,
    unit: 'd',
    is: `max(0, ${longestWith(changed)} - stay.longest)`,
    source: balance,
  }) as const;

/** What runs out first, and what stretches the stay the most. */
export const first = part({
  parameters: {
    'margin.stay': {
      label: 'Part of every store and tank kept back',
      unit: '%',
      values: [{ from: '2020-01-01', value: 15 }],
      range: [0, 30],
      source: house,
    },
    'stay.foretold': {
      label: 'Farther ahead nothing is foretold',
      unit: 'd',
      values: [{ from: '2020-01-01', value: 90 }],
      range: [30, 180],
      source: house,
    },
    'stretch.less': {
      label: 'What careful people use less',
      unit: '%',
      values: [{ from: '2020-01-01', value: 25 }],
      range: [10, 50],
      source: house,
    },
    'stretch.can': {
      label: 'Water can brought along',
      unit: 'gal',
      values: [{ from: '2020-01-01', value: 6 }],
      range: [2, 20],
      source: house,
    },
    'stretch.tote': {
      label: 'Gray water carried to the dump in a tote',
      unit: 'gal',
      values: [{ from: '2020-01-01', value: 15 }],
      range: [5, 40],
      source: house,
    },
    'stretch.charging': {
      label: 'What a while of charging stores each day',
      unit: 'Ah',
      values: [{ from: '2020-01-01', value: 20 }],
      range: [5, 100],
      source: house,
    },
  },
  formulas: {
    'stay.counted': {
      label: 'Days of the stay that is reckoned with',
      noun: 'the stay',
      unit: 'd',
      is: 'choose(!given(stay.days) && given(trip.nights), trip.nights * time.day, stay.days)',
      source: balance,
    },
    'stay.longest': {
      label: 'Longest stay: days until the first thing runs out or is full',
      noun: 'the longest stay',
      unit: 'd',
      is: longestWith({}),
      source: balance,
    },
    'ends.isFresh': endsWith('fresh'),
    'ends.isGray': endsWith('gray'),
    'ends.isBlack': endsWith('black'),
    'ends.isBattery': endsWith('battery'),
    'ends.isGas': endsWith('gas'),
    'stretch.saveWater': gained('Gained by using less water', {
      fresh: 'fresh.days / (1 - stretch.less)',
      gray: 'gray.days / (1 - stretch.less)',
    }),
    'stretch.carryWater': gained('Gained by a can of water brought along', {
      fresh: '(fresh.start + stretch.can) / water.daily',
    }),
    'stretch.carryGray': gained('Gained by a tote of gray water carried away', {
      gray: 'choose(gray.daily > 0, (gray.room + stretch.tote) / gray.daily, unlimited)',
    }),
    'stretch.saveBattery': gained('Gained by losing less charge a day', {
      battery: 'battery.lasts / (1 - stretch.less)',
    }),
    'stretch.charge': gained('Gained by charging a while each day', {
      battery:
        'choose(battery.loss > stretch.charging, min(battery.spare / (battery.loss - stretch.charging) * time.day, stay.foretold), stay.foretold)',
    }),
    'stretch.carryGas': gained('Gained by one more full cylinder', {
      gas: 'choose(gas.perDay > 0, min((gas.counted + cylinder.full) / gas.perDay * time.day, stay.foretold), stay.foretold)',
    }),
  },
  findings: {
    'stay-untold': {
      label: 'Days of the stay, not told',
      if: {
        when: 'assumed.weekend',
        wrong: 'How long you want to stay was not told.',
        proviso: 'you stay no longer than {stay.days}',
      },
      otherwise: 'How long the stay is was told.',
      source: house,
    },
  },
  rankings: {
    'runs-out': {
      label: 'What runs out first',
      first: 'least',
      of: {
        fresh: { by: 'fresh.days', says: 'the fresh water is gone' },
        gray: { by: 'gray.days', says: 'the gray tank is full' },
        black: { by: 'black.lasts', says: 'the black tank is full' },
        battery: { by: 'battery.lasts', says: 'the battery is down to what must stay in it' },
        gas: { by: 'gas.lasts', says: 'the gas is gone' },
      },
      source: balance,
    },
    stretches: {
      label: 'What stretches it most',
      first: 'most',
      of: {
        'save-water': { by: 'stretch.saveWater', says: 'careful use of water' },
        'carry-water': { by: 'stretch.carryWater', says: 'a can of water brought along' },
        'carry-gray': { by: 'stretch.carryGray', says: 'a tote of gray water carried to the dump' },
        'save-battery': {
          by: 'stretch.saveBattery',
          says: 'fewer lamps and screens, never less heat',
        },
        charge: { by: 'stretch.charge', says: 'a while of generator or tow vehicle each day' },
        'carry-gas': { by: 'stretch.carryGas', says: 'one more full cylinder' },
      },
      source: balance,
    },
  },
});
