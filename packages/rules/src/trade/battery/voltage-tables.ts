import { part } from '../../engine/define/topic';
import { otherVoltages, restingVoltage } from '../bibliography/battery';

/** Percent and volts of a rested twelve-volt battery, the emptiest first. */
type Rows = readonly (readonly [percent: number, volts: number])[];

const flooded: Rows = [
  [0, 11.89],
  [25, 12.06],
  [50, 12.24],
  [75, 12.45],
  [100, 12.65],
];
const agm: Rows = [
  [0, 11.8],
  [25, 12],
  [50, 12.3],
  [75, 12.6],
  [100, 12.8],
];
const gel: Rows = [
  [0, 11.8],
  [25, 12],
  [50, 12.35],
  [75, 12.65],
  [100, 12.85],
];
/** From 30 to 90 % only three tenths of a volt. */
const lifepo4: Rows = [
  [0, 10],
  [9, 12],
  [17, 12.8],
  [20, 12.9],
  [30, 13],
  [40, 13.1],
  [70, 13.2],
  [90, 13.3],
  [99, 13.4],
  [100, 13.6],
];

const names = { Flooded: 'flooded', Agm: 'AGM', Gel: 'gel', Lifepo4: 'LiFePO₄' } as const;

const volts = (name: string, rows: Rows, source: typeof restingVoltage) => ({
  label: `Resting voltage by state of charge, ${name}`,
  keyUnit: '%',
  valueUnit: 'V',
  rows,
  source,
});

const charge = (name: string, rows: Rows, source: typeof restingVoltage) => ({
  label: `State of charge by resting voltage, ${name}`,
  keyUnit: 'V',
  valueUnit: '%',
  rows: rows.map(([percent, at]) => [at, percent] as const),
  source,
});

/**
 * One table a chemistry, read both ways. Twelve-volt batteries at 80 °F.
 *
 *     V │        ╭──── flooded: a volt tells the charge
 *       │   ╭────╯
 *       │ ╭─────────── LiFePO₄: flat, and says almost nothing
 *       └───────────── state of charge
 */
export const voltageTables = part({
  tables: {
    voltsFlooded: volts('flooded', flooded, restingVoltage),
    voltsAgm: volts('AGM', agm, otherVoltages),
    voltsGel: volts('gel', gel, otherVoltages),
    voltsLifepo4: volts('LiFePO₄', lifepo4, otherVoltages),
    chargeFlooded: charge('flooded', flooded, restingVoltage),
    chargeAgm: charge('AGM', agm, otherVoltages),
    chargeGel: charge('gel', gel, otherVoltages),
    chargeLifepo4: charge('LiFePO₄', lifepo4, otherVoltages),
  },
});

type Table = 'Flooded' | 'Agm' | 'Gel' | 'Lifepo4';

/** What the battery's chemistry picks of four, named by their table. */
const chosen = (each: (table: Table) => string): string =>
  `choose(battery.chemistry == 'flooded', ${each('Flooded')}, choose(battery.chemistry == 'agm', ${each('Agm')}, choose(battery.chemistry == 'gel', ${each('Gel')}, ${each('Lifepo4')})))`;

/** The resting voltage of a block at a state of charge, by the table of the battery's chemistry. */
export const voltsAt = (charge: string): string =>
  chosen((table) => `lookup(volts${table}, ${charge})`);

/** The one of four formulas that begin with `name`, by the battery's chemistry. */
export const byChemistry = (name: string): string => chosen((table) => `${name}${table}`);

/** The state of charge at a voltage by one table, under that table's own source. */
export const chargeBy = (table: Table, at: string) => ({
  label: `State of charge by the voltage, ${names[table]}`,
  unit: '%',
  is: `lookup(charge${table}, ${at})`,
  source: table === 'Flooded' ? restingVoltage : otherVoltages,
});
