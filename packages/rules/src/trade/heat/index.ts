import { family } from '../../engine/define/topic';
import { frost } from './frost';
import { furnace } from './furnace';
import { loss } from './loss';
import { shell } from './shell';

/** Warmth: what a trailer loses, and for how long a furnace has to burn to hold it. */
export const heatTrade = family(shell, loss, furnace, frost);
