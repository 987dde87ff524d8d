import type { Leave } from '../engine/define/changes';

/**
 * How people name what keeps somebody warm, breathing or well, as the beginnings of words: nobody is
 * told to do without it.
 */
export const needed: NonNullable<Leave['keeps']> = {
  named: [
    'heat',
    'furnace',
    'wood stove',
    'electric blanket',
    'cpap',
    'bipap',
    'apap',
    'breath',
    'oxygen',
    'ventilator',
    'nebul',
    'dialys',
    'insulin',
    'medic',
    'respirat',
    'wheelchair',
  ],
  butNot: ['water heat'],
};
