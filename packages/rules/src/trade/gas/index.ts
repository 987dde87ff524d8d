import { family } from '../../engine/define/topic';
import { blower } from '../battery/blower';
import { furnace } from '../heat/furnace';
import { loss } from '../heat/loss';
import { shell } from '../heat/shell';
import { boil } from './boil';
import { connection } from './connection';
import { cylinderFacts } from './cylinders';
import { demand } from './demand';
import { vapor } from './vapor';

/** Propane: connection, cylinders, demand and how fast it boils off. */
export const gasTrade = family(
  connection,
  cylinderFacts,
  shell,
  loss,
  furnace,
  blower,
  demand,
  vapor,
  boil,
);
