import { family } from '../../engine/define/topic';
import { age } from './age';
import { tireFacts, upgradeFacts, wheelFacts } from './facts';
import { speed } from './speed';

/** Tires: what is written on them, their speed and age. */
export const tireTrade = family(tireFacts, wheelFacts, upgradeFacts, speed, age);
