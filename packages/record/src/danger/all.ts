import { air, ill } from './air';
import { cold } from './cold';
import { doubt } from './doubt';
import { mishaps } from './mishap';
import { odd } from './odd';
import { power } from './power';
import { lifted, road } from './road';
import type { Sign } from './shapes';

/** What people write when something can hurt somebody today. A false alarm costs a look, a miss more. */
export const signs: readonly Sign[] = [
  ...air,
  ...ill,
  ...power,
  ...road,
  ...lifted,
  ...cold,
  ...doubt,
  ...odd,
  ...mishaps,
];
