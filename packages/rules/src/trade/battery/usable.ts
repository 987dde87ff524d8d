import { part } from '../../engine/define/topic';
import {
  coldCapacity,
  depthAllowed,
  depthLead,
  depthLithium,
  energyBalance,
} from '../bibliography/battery';

/**
 * What the bank gives before the stop line.
 *
 *     ├──────────── battery.available ────────────┤   the bank at this temperature
 *     ├──── battery.usable ────┤                      down to the stop line
 *    full                    stop                empty
 */
export const usable = part({
  facts: {
    'battery.makersDepth': {
      kind: 'quantity',
      label: 'Depth of discharge the maker allows',
      unit: '%',
      least: 10,
      most: 100,
      ask: 'How deep does the maker allow the battery to be discharged?',
      where: 'the battery’s data sheet',
    },
  },
  parameters: {
    'depth.lead': {
      label: 'Deepest discharge of lead-acid, AGM and gel',
      unit: '%',
      values: [{ from: '2020-01-01', value: 50 }],
      source: depthLead,
    },
    'depth.lithium': {
      label: 'Deepest discharge of LiFePO₄ where the maker states none',
      unit: '%',
      values: [{ from: '2020-01-01', value: 80 }],
      source: depthLithium,
    },
    'depth.lithiumMost': {
      label: 'Deepest discharge of LiFePO₄, whatever the maker states',
      unit: '%',
      values: [{ from: '2020-01-01', value: 90 }],
      source: depthLithium,
    },
  },
  tables: {
    coldLead: {
      label: 'Share of capacity by temperature, lead-acid',
      keyUnit: '°F',
      valueUnit: '1',
      rows: [
        [-20, 0.35],
        [0, 0.55],
        [32, 0.75],
        [50, 0.87],
        [80, 1],
      ],
      source: coldCapacity,
    },
    coldLithium: {
      label: 'Share of capacity by temperature, LiFePO₄',
      keyUnit: '°F',
      valueUnit: '1',
      rows: [
        [-4, 0.6],
        [32, 0.85],
        [50, 0.95],
        [80, 1],
      ],
      source: coldCapacity,
    },
  },
  formulas: {
    'battery.depth': {
      label: 'Depth of discharge allowed',
      noun: 'the depth of discharge allowed',
      unit: '%',
      is: "choose(battery.chemistry == 'lifepo4', choose(known(battery.makersDepth), min(battery.makersDepth, depth.lithiumMost), depth.lithium), choose(known(battery.makersDepth), min(battery.makersDepth, depth.lead), depth.lead))",
      within: ['0', 'max(depth.lithiumMost, depth.lead)'],
      source: depthAllowed,
    },
    'battery.temperatureFactor': {
      label: 'Share of the capacity at this temperature',
      noun: 'the share of the capacity at this temperature',
      unit: '%',
      is: "choose(battery.chemistry == 'lifepo4', lookup(coldLithium, battery.cells), lookup(coldLead, battery.cells))",
      source: coldCapacity,
    },
    'battery.available': {
      label: 'Capacity at this temperature',
      noun: 'the capacity at this temperature',
      unit: 'Ah',
      is: 'bank.capacity * battery.temperatureFactor',
      source: coldCapacity,
    },
    'battery.usable': {
      label: 'Usable capacity, full to the stop line',
      noun: 'the usable capacity',
      unit: 'Ah',
      is: 'battery.available * battery.depth',
      source: depthAllowed,
    },
    'battery.usableEnergy': {
      label: 'Usable energy at nominal voltage',
      unit: 'Wh',
      is: 'battery.usable * bank.volts',
      source: energyBalance,
    },
    'stop.charge': {
      label: 'Charge at the stop line',
      noun: 'the charge at the stop line',
      unit: 'Ah',
      is: 'battery.available * (1 - battery.depth)',
      source: energyBalance,
    },
  },
});
