import { family } from '../../engine/define/topic';
import { loads } from './loads';
import { supply } from './supply';

/** Shore power: what the supply gives and what is plugged in. */
export const powerTrade = family(supply, loads);
