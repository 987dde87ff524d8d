import { family } from '../../engine/define/topic';
import { tireFacts, upgradeFacts, wheelFacts } from './facts';
import { age, speed } from './speed-and-age';

/** Tires: what is written on them, their speed and age. */
export const tireTrade = family(tireFacts, wheelFacts, upgradeFacts, speed, age);
