import { part } from '../../engine/define/topic';
import { freezingTable } from '../../trade/bibliography/battery';

/** What a trailer that stands is asked for: whether its battery freezes. */
export const storage = part({
  formulas: {
    'stored.isMeant': {
      label: 'It stands unused or winterized',
      unit: 'yes-no',
      is: "(given(trailer.use) && trailer.use == 'stands-unused') || (given(water.state) && water.state == 'winterized')",
      source: freezingTable,
    },
    'stored.cells': {
      label: 'Temperature of the battery where it stands',
      noun: 'the temperature of the battery',
      unit: '°F',
      is: 'choose(given(battery.temperature) || !given(outside.temperature), battery.temperature, outside.temperature)',
      source: freezingTable,
    },
    'stored.isAcid': {
      label: 'The battery holds acid',
      unit: 'yes-no',
      is: "battery.chemistry == 'flooded' || battery.chemistry == 'agm' || battery.chemistry == 'gel'",
      source: freezingTable,
    },
    'stored.isCold': {
      label: 'It is cold enough to freeze a flat battery',
      unit: 'yes-no',
      is: 'stored.cells < frost.point',
      source: freezingTable,
    },
    'stored.isUntold': {
      label: 'Nobody read how full the battery is',
      unit: 'yes-no',
      is: '!start.isRead',
      source: freezingTable,
    },
  },
  findings: {
    'battery-frost': {
      label: 'Battery in the frost',
      askedBy: ['trailer.use', 'water.state', 'battery.voltage', 'monitor.stateOfCharge'],
      stop: {
        when: 'stored.isMeant && !stored.isUntold && stored.isAcid && stored.cells < stored.freezesAt',
        wrong: 'At this charge the battery freezes and splits.',
        because: 'At that charge its acid freezes at {stored.freezesAt}. It may be frozen already.',
        do: 'Take the battery out and thaw it in the warm. Look for a crack or a bulge. Then charge the battery full. Never charge a frozen battery.',
      },
      if: {
        when: 'stored.isMeant && stored.isUntold && stored.isAcid && stored.isCold',
        wrong: 'How full the battery is, is not known yet.',
        because: 'A flat lead battery freezes and splits; a full one does not.',
        do: 'Charge it full and take its cables off, or store it in a frost-free place.',
        proviso: 'its battery is full, or stands where it does not freeze',
      },
      open: {
        wrong: 'How full the battery is, is not known yet.',
        because: 'A flat lead battery freezes and splits; a full one does not.',
        do: 'Charge it full and take its cables off, or store it in a frost-free place.',
      },
      otherwise: 'The battery does not freeze.',
      source: freezingTable,
    },
  },
});
