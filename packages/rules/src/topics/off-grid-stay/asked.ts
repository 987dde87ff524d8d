import type { Asking, Called } from '../../engine/define/shapes';
import { withFurnace } from '../../trade/battery/blower';

/** What people ask of a stay; how many days is the first figure of the answer. */
export const askings: Readonly<Record<string, Asking>> = {
  days: {
    label: 'How many days, and what ends them?',
    results: ['stay.longest', 'runs-out', 'fresh.days', 'gray.days'],
    impliedBy: ['water.daily', 'water.freshTank', 'water.grayTank', 'stay.days'],
    says: [
      { when: 'ends.isGray', says: 'The gray tank is full after {stay.longest}, before all else.' },
      {
        when: 'ends.isFresh',
        says: 'The fresh water is gone after {stay.longest}, before all else.',
      },
      {
        when: 'ends.isBlack',
        says: 'The black tank is full after {stay.longest}, before all else.',
      },
      {
        when: 'ends.isBattery',
        says: 'The battery is down to what must stay in it after {stay.longest}, before all else.',
      },
      { when: 'ends.isGas', says: 'The gas is gone after {stay.longest}, before all else.' },
      { says: 'The first thing runs out or is full after {stay.longest}.' },
      { says: 'The fresh water lasts {fresh.days}, and the gray tank takes {gray.days}.' },
      { says: 'The fresh water by itself lasts {fresh.days}; most stays end with the gray tank.' },
      { says: 'The gray tank by itself is full after {gray.days}.' },
    ],
  },
  battery: {
    label: 'Does the battery last, with the sun there is?',
    yesOrNo: true,
    results: ['battery.lasts', 'battery.loss', 'limit.battery', 'limit.night'],
    impliedBy: ['battery.dayDrawn', 'battery.capacity', 'solar.power', 'loads.dc', 'loads.ac'],
    says: 'The battery lasts {battery.lasts}; it loses {battery.loss} a day.',
  },
  gas: {
    label: 'Does the gas last?',
    yesOrNo: true,
    results: ['gas.lasts', 'gas.perDay', 'limit.gas'],
    impliedBy: ['gas.dayUsed', 'cylinder.fill', 'furnace.input'],
    says: [
      ...withFurnace('the gas lasts {gas.lasts}. A day takes {gas.perDay}.'),
      ...withFurnace('a day takes {gas.perDay}.'),
      { says: 'The gas lasts {gas.lasts}; a day takes {gas.perDay}.' },
    ],
  },
  stretch: {
    label: 'What stretches it most?',
    results: ['stretches', 'stay.longest'],
  },
  road: {
    label: 'What do the tanks do to the trailer on the road?',
    results: ['trailer.leaving', 'tongue.leaving', 'limit.leaving', 'finding.tongue-home'],
    impliedBy: ['water.grayAhead', 'water.blackAhead', 'trailer.measuredTongueWeight'],
    says: [
      {
        says: 'Where the site has water, carry little and fill there. With {trailer.freshWater} of fresh water the trailer weighs {trailer.arriving} on the way there, and {trailer.leaving} going home with its waste. The most allowed is {trailer.gvwr}.',
      },
      {
        says: 'Where the site has water, carry little and fill there. With {trailer.freshWater} of fresh water the trailer weighs {trailer.arriving} on the way there, and {trailer.leaving} going home with its waste.',
      },
      {
        says: 'With the tanks as they are after the stay the trailer weighs {trailer.leaving}.',
      },
    ],
  },
};

/** What people call things. */
export const called: Called = {
  topic: [
    'boondocking',
    'dry camping',
    'off grid',
    'no hookups',
    'dispersed camping',
    'how long can we stay',
    'how many days',
    'run out of water',
    'tank is full',
    'wild camping',
    'parking lot overnight',
    'self-contained',
  ],
  facts: {
    'stay.days': ['nights', 'weekend', 'long weekend', 'week', 'Friday to Sunday'],
    'water.freshTank': [
      'fresh water',
      'of fresh',
      'fresh tank',
      'fresh water capacity',
      'potable tank',
    ],
    'water.grayTank': ['gray tank', 'grey tank', 'galley tank', 'sink tank', 'shower tank'],
    'water.blackTank': ['black tank', 'cassette', 'toilet tank', 'holding tank'],
    'water.daily': ['gallons a day', 'we go through', 'showers', 'water use'],
    'water.grayShare': ['down the drain', 'down the sink'],
    'water.onArrival': ['tap at the site', 'water spigot', 'fill station', 'potable water there'],
    'black.daily': ['flushes', 'per flush'],
    'trailer.freshWater': ['start full', 'fill it at home', 'half a tank'],
    'battery.dayDrawn': ['amp hours a day', 'monitor says'],
    'battery.capacity': ['amp hours', 'battery size'],
    'solar.power': ['panels on the roof', 'solar watts', 'suitcase panel'],
    'solar.peakSunHours': ['in the shade', 'under trees', 'sun hours'],
    'charging.spells': ['generator', 'run the truck', 'generator hours'],
    'gas.dayUsed': ['pounds of propane a day', 'a bottle a week'],
    'furnace.input': ['furnace BTU'],
    'outside.temperature': ['lows', 'overnight low', 'cold nights'],
  },
};
