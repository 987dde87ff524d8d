import { family } from '../../engine/define/topic';
import { furnace } from '../heat/furnace';
import { loss } from '../heat/loss';
import { shell } from '../heat/shell';
import { bank } from './bank';
import { blower } from './blower';
import { charging } from './charging';
import { day } from './day';
import { freeze } from './freeze';
import { hours } from './hours';
import { loads } from './loads';
import { reading } from './reading';
import { stateOfCharge } from './state-of-charge';
import { usable } from './usable';
import { voltageTables } from './voltage-tables';
import { wire } from './wire';

/** The house battery: bank, state of charge, what is drawn and charged over a day, wire and fuse. */
export const batteryTrade = family(
  bank,
  voltageTables,
  usable,
  reading,
  stateOfCharge,
  freeze,
  loads,
  shell,
  loss,
  furnace,
  blower,
  charging,
  hours,
  day,
  wire,
);
