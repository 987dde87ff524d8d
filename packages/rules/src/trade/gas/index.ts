import { family } from '../../engine/define/topic';
import { blower } from '../battery/blower';
import { boil } from './boil';
import { connection } from './connection';
import { cylinderFacts } from './cylinders';
import { demand } from './demand';
import { vapour } from './vapour';

/** Propane: connection, cylinders, demand and how fast it boils off. */
export const gasTrade = family(connection, cylinderFacts, blower, demand, vapour, boil);
