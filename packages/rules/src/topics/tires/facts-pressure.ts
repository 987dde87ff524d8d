import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const pressure = { kind: 'quantity', unit: 'psi', least: 0, most: 150 } as const;
const sidewall = 'the sidewall';

/** What is asked about air. */
export const pressureFacts = part({
  facts: {
    'tire.pressure': {
      ...pressure,
      label: 'Pressure in the tire',
      noun: 'the pressure',
      instead: 'Measure the pressure again, cold',
      ask: 'What pressure is in the tire?',
      where: 'a gauge, before the day’s drive',
    },
    'tire.readCold': {
      kind: 'yes-no',
      label: 'Pressure read cold',
      noun: 'whether the pressure was read cold',
      ask: 'Was the pressure read cold, three hours after the last drive and out of the sun?',
      where: 'told by the owner',
    },
    'tire.maxPressure': {
      ...pressure,
      exact: true,
      label: 'Pressure on the sidewall',
      noun: 'the sidewall’s pressure',
      ask: 'At what pressure does the sidewall state its load?',
      where: sidewall,
    },
    'tire.labelPressure': {
      ...pressure,
      exact: true,
      label: 'Pressure on the certification label, cold',
      noun: 'the label’s pressure',
      ask: 'What cold pressure does the label of that trailer or vehicle state for this axle?',
      where: 'the label on the trailer’s left front side, or the one in the driver’s door',
    },
    'tire.table': {
      kind: 'rows',
      columns: {
        pressure: { label: 'Pressure', unit: 'psi', least: 1, most: 150, required: true },
        load: { label: 'Load', unit: 'lb', least: 0, most: 20_000, required: true },
      },
      label: 'Tire maker’s load table',
      ask: 'What does the tire maker’s table allow at each pressure, single or dual as they run?',
      where: 'the tire maker’s load and inflation table for that size and load range',
      silent: {
        value: 'none',
        says: 'No load table of the tire’s maker at hand.',
        source: custom,
        quiet: true,
      },
    },
    'tire.loadAtPressure': {
      ...weight,
      exact: true,
      label: 'Load the maker allows at that pressure',
      noun: 'what the maker allows at that pressure',
      ask: 'What load does the tire maker’s table allow at the pressure that is in the tire?',
      where: 'the tire maker’s load and inflation table for that size and load range',
    },
  },
});
